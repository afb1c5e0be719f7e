/** Writes documents as tagged PDF (PDF/UA): headings, table headers, pictures with words, embedded fonts, the same bytes for the same input. */
package roundwright.sheet.pdf;
