# What today asks.
