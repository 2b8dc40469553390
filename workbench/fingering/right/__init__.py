"""The right hand: p i m a for every plucked note, by a least-cost path.

Uses the moments of `lattice`; the left hand is given.
"""
