"""A hand on the neck: what fingers reach, every grip for notes that begin together, its cost.

Knows the values of the engine and the instrument; nothing of time.
"""
