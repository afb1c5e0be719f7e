/** Documents as trees of elements and text; nothing that a person typed can become markup. */
package roundwright.sheet.markup;
