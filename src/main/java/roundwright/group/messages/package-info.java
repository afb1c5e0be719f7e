/**
 * Counts out of what students write.
 *
 * <p>A pasted text falls into messages ({@code ChatReader}), a message into tokens ({@code Tokens}). {@code Marker} marks what
 * has a part in saying a count, and leaves out numbers that are dates, sizes, times or prices ({@code Noise}); the phrases that give
 * a number its meaning stand in the resource {@code messages/cues.txt}, where new ones are added. {@code MessageReader} goes through
 * the sentences and knows who speaks and of which part; {@code SentenceReader} ties counts to rounds, run after run, with the
 * pattern's own counts to tell a round's number from a count. {@code Conversation} remembers what the next message leans on.
 *
 * <p>Tables pasted as text are read cell by cell ({@code PastedTable}). {@code Filing} keeps what a message was found to say: a count
 * said again stands in the place of the one before and keeps it, rounds said to be right get the pattern's counts, and two numbers left
 * over are taken for a round and its count where they fit.
 *
 * <p>The tables under {@code src/test/resources/roundwright/messages} hold invented messages with what they say. A new kind of
 * message is first written there.
 */
package roundwright.group.messages;
