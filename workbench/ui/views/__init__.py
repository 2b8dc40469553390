"""The teaching views in the middle of the window, one room each, and what they share.

A view may use ``page`` here and the rooms below, never another view.
"""
