"""The use cases, each one atomic block."""
