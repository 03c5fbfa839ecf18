# The first pages. Each can be skipped; none keeps anyone from breathing or from saying that something is wrong.

first-breathe-title = Primero, respira
first-breathe = Ponte en una silla o boca arriba, y deja que el aire entre y salga. Toma aire mientras cuentas hasta cinco, y suéltalo mientras cuentas hasta cinco.
first-breathe-no-plan = Para esto no hace falta ningún plan, ni preparar nada antes.

first-about-title = Qué es Frond
first-about-is = Un diario privado para los ejercicios que te da tu especialista. Muestra qué toca hoy y guarda lo que hiciste y cómo te sentiste.
first-about-plan = Todo lo que dice sobre avanzar, quedarse o volver atrás viene del plan de tu especialista. Frond no tiene números propios.
first-about-not = No es un consejo médico, y no sustituye una visita ni una llamada.
first-about-clinician = Lo que te diga tu especialista va antes que todo lo que leas aquí.
first-about-sends-nothing = Frond no envía nada. Nadie ve lo que escribes hasta que lo entregas tú. Si algo no va bien, tienes que llamar tú.
first-about-adults = Está hecho para personas adultas. Si eres menor de edad, úsalo solo con un plan en el que tu especialista diga que es para ti.
first-about-right = Puedes parar en cualquier momento, y parar siempre está bien.

first-lock-title = Qué abre tu diario
first-lock-opens = Tu diario está cerrado y se abre con lo que elegiste para ello. Nadie más lo tiene, y Frond no lo guarda.
first-lock-beside = Este cierre es distinto del bloqueo del teléfono. Elige algo que no abra nada más y que otras personas no sepan.
first-lock-forgotten = Si lo olvidas, nadie puede averiguarlo, y el diario se queda cerrado. Doce palabras en papel son la única forma de volver a entrar.
first-lock-watched = Quien pueda ver cómo lo abres puede leer lo mismo que tú.

first-language-title = Tu idioma
first-language-later = Puedes cambiarlo en cualquier momento en los ajustes.

first-copy-title = Si este teléfono se pierde
first-copy-without = Lo que escribes está solo en este dispositivo. Sin una copia en otro sitio, desaparece cuando el dispositivo se pierde o se rompe.
first-copy-phrase = Primero van doce palabras que apuntas en papel. Abren la copia, y abren tu diario si olvidas lo que lo abre.
first-copy-elsewhere = Luego va la copia. La pones donde quieras. Va sellada: solo la abren tus doce palabras.
first-copy-later = Puedes hacerlo más tarde. Está en «Cómo se guarda el diario».

action-first-next = Siguiente
action-first-skip = Saltar esto
action-first-done = Ir a Hoy
