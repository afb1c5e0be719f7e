package roundwright.pattern;

import roundwright.notation.Terms;

/** What the lines of a part are read with. */
record PartContext(Terms terms, Leaning leaning, Interpreter interpreter, Mends mends) {}
