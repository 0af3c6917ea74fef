"""Items, lots, balances, sharing and reorder sums."""
