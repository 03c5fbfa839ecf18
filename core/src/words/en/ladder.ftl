# The steps of the plan.

ladder-title = Your steps
ladder-empty = Your plan has no steps. Breathing and rest are the plan.
ladder-here = You are here
ladder-gate = Talk with your clinician before going beyond this one
ladder-smaller = Going to an earlier step is always fine. You need no reason.
ladder-larger = This is further on than your plan says now. You can record it as your own choice. It is not meant to hurt; stop when it does, and tell your clinician.
