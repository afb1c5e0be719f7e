/**
 * Counts out of what students write.
 *
 * <p>A pasted text falls into messages ({@code ChatReader}), a message into tokens ({@code Tokens}). {@code Marker} marks what
 * has a part in saying a count, and leaves out numbers that are dates, sizes, times or prices ({@code Noise}); the phrases that give
 * a number its meaning stand in the resource {@code messages/cues.txt}, where new ones are added. {@code MessageReader} goes through
 * the sentences and knows who speaks and of which part; {@code SentenceReader} ties counts to rounds, run after run, with the
 * pattern's own counts to tell a round's number from a count. {@code Conversation} remembers what the next message leans on.
 *
 * <p>The tables under {@code src/test/resources/roundwright/messages} hold invented messages with what they say. A new kind of
 * message is first written there.
 */
package roundwright.group.messages;
