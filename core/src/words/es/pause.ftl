# Time off, something to look forward to, coming back, and the end of the programme.

time-off-title = Días libres
time-off-says = En estos días no se te pide nada y no llega ningún recordatorio.
time-off-no-reason = No hace falta un motivo, y no cuenta en contra de nada.
time-off-plan = Aun así, tu plan puede mirar cuánto hace de tu última práctica. Si va a ser mucho tiempo, díselo a tu especialista.
time-off-empty = Ahora no hay ninguno.
time-off-from = Desde
time-off-to = Hasta, con ese día incluido

look-forward-title = Algo que te hace ilusión
look-forward-says = Algo pequeño y bueno, con tus palabras. Se ve en Hoy hasta que escribas otra cosa.
look-forward-private = Es solo cosa tuya. No va en ningún resumen.
look-forward-new = ¿Qué te hace ilusión?

welcome-title = Hola de nuevo
welcome-glad = Qué bien que estás aquí.
welcome-nothing-expected = No se esperaba nada de ti, y no hay nada que recuperar.
welcome-what = ¿Qué te gustaría? Todo esto está bien.

ending-title = Cómo continuar desde aquí
ending-says = Hoy no hace falta decidir nada. Cada una de estas opciones es buena, y puedes cambiar de idea.
ending-signs = Si algo no va bien, eso va primero: dilo, y llama.
ending-talk = Hablarlo antes
ending-talk-says = { $clinician } puede servirte de apoyo para decidir. Puedes llamar al { $phone } ({ $hours }).
ending-talk-no-plan = La persona que te atiende puede servirte de apoyo para decidir.
ending-maintain = Quedarme aquí
ending-maintain-says = Quédate con lo que usas ahora todo el tiempo que quieras. No se ofrece ningún paso siguiente hasta que lo retires.
ending-maintain-said = Dijiste que te quedas aquí por ahora. Puedes retirarlo donde tu plan dice cómo continuar.
ending-pause = Hacer una pausa
ending-pause-says = Toma días libres, todos los que necesites.
ending-finish = Terminar
ending-finish-says = Antes de terminar puedes entregar un resumen, si quieres.
ending-finish-keep = Puedes conservar tu diario como está. Sigue cerrado, y no se te pide nada más.
ending-finish-erase = O puedes borrar todo para siempre, con todas las copias de este dispositivo.

action-time-off = Días libres
action-look-forward = Algo que te hace ilusión
action-step-here = El paso en el que estás
action-step-smaller = Uno más pequeño
action-ending = Cómo continuar desde aquí
action-keep-diary = Conservar mi diario como está
