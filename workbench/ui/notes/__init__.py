"""Teaching notes of a bar: read, written, and what hangs on them.

May use the fretboard, the bench and the kit.
"""
