"""Pure formulas, one file a trade subject: bare floats or NumPy arrays in canonical units in and out, no rulebook, no files."""
