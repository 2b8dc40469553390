"""The fretboard: the fingers of a bar drawn, and moved by hand.

May use the bench and the kit.
"""
