"""What is true of the whole lesson: for whom, on what, in which key, how hard.

May use the bench and the kit.
"""
