"""A Piece written as MusicXML and as a Standard MIDI File.

Uses `order` and `ringing`.
"""
