"""The bars down the left side, with their marks, pictures and form.

May use the bench and the kit.
"""
