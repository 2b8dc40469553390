"""The techniques of the piece, with exercises made of them, its form and harmony.

May use the shared page, notes, score, paper and what is below them.
"""
