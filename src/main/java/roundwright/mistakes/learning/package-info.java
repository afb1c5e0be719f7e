/**
 * Learns how often this group, and each student in it, makes each kind of mistake.
 *
 * <p>Nobody sees a mistake happen; the chain says how likely each was. So the rates are learned in turns: with the rates
 * known so far, how many mistakes of each kind are expected to lie behind the reports (and how many there could have
 * been); from that, the rates. Each rate starts with a belief of fixed weight (two hundred steps, or twenty increases,
 * rounds or reports), for the group about the story's own rate, for the student about the group's. A student with few
 * reports is taken to be like the group; nothing is made of two wrong counts.
 */
package roundwright.mistakes.learning;
