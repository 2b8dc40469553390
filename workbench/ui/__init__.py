"""The window, in rooms: each a folder that says in its own words what it is for.

A room may use the rooms that stand below it in the contract of pyproject.toml, and never one
above or beside it; what is composed of several rooms is composed in ``window``.
"""
