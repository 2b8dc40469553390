"""The practice plan by days.

May use the shared page, paper and what is below it.
"""
