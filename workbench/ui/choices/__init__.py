"""Other fingerings of a bar, compared with the chosen one or typed by hand.

May use the bench and the kit.
"""
