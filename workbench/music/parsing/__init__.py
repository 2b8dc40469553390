"""What a score says, place by place: staves, fingers, signs, keys, damaged files.

Uses the values of music only.
"""
