"""An answer as people look at it: calendar, drawing, printed sheet. Pure functions from finished answers to text.

Nothing here reads a request, a rulebook or a question's work: an answer from a file serves as well as a fresh one. The
libraries that write the formats are imported when the first view is written, so that no other answer waits for them.
"""
