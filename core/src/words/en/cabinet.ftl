# Summaries that came back, and the visit page.
