"""The words for what music says of itself: the form, what was met in reading.

Called where something is shown; uses the values of music and their playing order.
"""
