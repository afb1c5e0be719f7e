/**
 * What is printed, sent and hung on the wall: sheets for the teacher and for students, as tagged PDF and as HTML pages that need nothing
 * but themselves.
 *
 * <p>{@link roundwright.sheet.SheetOrder} says what is wanted: which course and group, which kinds, which lesson, in which styles, on which paper.
 * {@link roundwright.sheet.Sheets} lists the documents that it comes to, each with its title and file name, without making any. A
 * {@link roundwright.sheet.Sheet} is made when its bytes are asked for; {@link roundwright.sheet.SheetFolder} makes many at once, tells how far it is, can be
 * stopped, and leaves all of them in the folder or none.
 *
 * <p>Below: {@code content} says what stands on each sheet, {@code chart} draws, {@code style} holds the looks, {@code markup} the trees of which all
 * documents are made, {@code pdf} and {@code phone} the two ways out. To add a sheet, write a class in {@code content} that puts a document
 * together, a {@link roundwright.sheet.SheetKind}, and a line in {@code Sheets}; its sentences go into {@code wording/sheet.properties}.
 */
package roundwright.sheet;
