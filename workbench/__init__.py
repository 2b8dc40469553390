"""Pluckwright: lesson preparation for teachers of plucked, fretted instruments."""

__version__ = "0.1.0"
