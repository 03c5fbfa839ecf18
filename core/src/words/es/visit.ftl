# For the visit: questions, activities and goals, how it was the day after, a summary being put together.

questions-title = Preguntas para tu visita
questions-empty = Todavía nada. Escribe lo que te gustaría preguntar cuando se te ocurra.
questions-new = ¿Qué te gustaría preguntar?

activities-title = Lo que te importa
activities-how = Valora cómo está ahora. Ninguna respuesta es correcta o incorrecta.
activities-skip = No hace falta contestar todo, ni nada.
activities-empty = Tu plan no nombra actividades ni metas. Puedes contarle a tu especialista lo que te importa.
activities-ask = ¿Cuánto puedes hacerlo ahora? { $activity }
activities-least = no puedo hacerlo
activities-most = puedo como antes
activities-goal-ask = ¿Cómo está ahora, comparado con lo que esperabas? { $goal }
activities-goal-much-less = Mucho menos de lo esperado
activities-goal-less = Menos de lo esperado
activities-goal-as-hoped = Como esperaba
activities-goal-more = Más de lo esperado
activities-goal-much-more = Mucho más de lo esperado

settled-title = ¿Se calmó?
settled-about = Se trata de tu sesión: { $when }.
settled-why = Sea como sea, no hiciste nada mal. Tu respuesta no cambia nada de lo que dice tu plan.
settled-yes = Sí
settled-not-yet = Todavía no

summary-from = ¿Desde qué día? Déjalo vacío para empezar por el principio.
summary-to = ¿Hasta qué día, incluido? Déjalo vacío para acabar hoy.
summary-with-notes = Con mis notas
summary-with-questions = Con mis preguntas para la visita
summary-way-recipients = Sellarlo para las personas de mi plan
summary-way-passphrase = Sellarlo con una contraseña
summary-way-open = No sellarlo
summary-ask-time-alone = Decir que quiero un rato a solas con quien lo reciba. Solo va en un archivo sellado, y no se vuelve a mostrar aquí.

action-questions = Preguntas para tu visita
action-activities = Lo que te importa
action-settled = Decir cómo fue después
action-summary = Preparar un resumen
action-look-again = Ver qué va incluido
