"""What leaves the program as a page or a file: handout, printing, export.

May use the score, the bench and the kit.
"""
