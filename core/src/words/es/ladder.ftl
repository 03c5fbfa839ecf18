# The steps of the plan.

ladder-title = Tus pasos
ladder-empty = Tu plan no tiene pasos. El plan es respirar y descansar.
ladder-here = Estás aquí
ladder-gate = Habla con tu especialista antes de pasar de este
ladder-smaller = Ir a un paso anterior siempre está bien. No hace falta un motivo.
ladder-larger = Esto va más allá de lo que dice ahora tu plan. Puedes anotarlo como decisión tuya. No tiene que doler; para si duele, y díselo a tu especialista.
