"""Units and how people write them."""
