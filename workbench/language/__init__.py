"""The words that users read, in the language they chose."""
