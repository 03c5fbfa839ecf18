# The letter for the referrer, and what else goes out.
