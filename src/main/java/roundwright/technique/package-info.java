/**
 * The catalogue of techniques as data, what a line uses, where each technique comes first, and what each needs.
 *
 * <p>{@link roundwright.technique.Techniques} holds them, in teaching order; {@link roundwright.technique.FirstUses} finds in a pattern where each comes
 * first. Two kinds are told apart: techniques that are new movements of the hands (the magic ring, the increase), which
 * patterns write and of which a lesson should have few; and groundwork (holding the hook, counting, reading a line, fastening off), which is shown in
 * passing: where a line writes it, or on its occasion. The catalogue's words are said in either terms and to either hand. To add a technique, add a
 * block to {@code techniques.txt}; its head says how.
 */
package roundwright.technique;
