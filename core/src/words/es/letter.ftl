# The letter for the referrer, and what else goes out.

out-summary-bundle = Guardar una lista para el programa de una clínica (FHIR)
