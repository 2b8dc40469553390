"""The arranging view: the original above, the arrangement below.

May use the shared page, score and what is below it.
"""
