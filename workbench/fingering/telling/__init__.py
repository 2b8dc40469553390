"""What a path means for the notes, and the words for it: audit, reasons, comparisons.

Uses `lattice`; the engine and what shows fingerings use it.
"""
