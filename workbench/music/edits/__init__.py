"""Correcting the music: plain functions from piece to piece.

Every note that an edit does not touch keeps its id, so that pins and teaching notes
stay with it. What cannot be done is raised as BadInput with one sentence.
"""
