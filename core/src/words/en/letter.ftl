# The letter for the referrer, and what else goes out.

out-summary-bundle = Save a list for a clinic's program (FHIR)
