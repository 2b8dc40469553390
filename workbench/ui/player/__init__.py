"""The lesson heard: what is played, the controls, and how the tempo climbs.

May use the fretboard, the bench and the kit.
"""
