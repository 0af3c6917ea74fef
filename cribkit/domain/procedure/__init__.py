"""The repair procedure's model and its checks."""
