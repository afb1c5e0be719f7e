package roundwright.course.file;

import roundwright.notation.Span;

/** A technique that a lesson says is new, and where it says so. */
record PlacedTechnique(String id, Span span) {}
