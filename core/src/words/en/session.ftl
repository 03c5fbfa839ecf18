# A session: before, during, after.
