"""A piece as layers of hand states, the steps between them priced, the least path through.

Uses `hand` and the weights; says nothing in words.
"""
