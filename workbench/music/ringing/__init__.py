"""What sounds and for how long: shared sounds, slurs, broken chords, campanella.

Uses the values of music only.
"""
