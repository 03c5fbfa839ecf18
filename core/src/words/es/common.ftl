# Words that several rooms share: dates, sizes, positions, practices, what to press.

common-date = { $weekday ->
        [1] lunes
        [2] martes
        [3] miércoles
        [4] jueves
        [5] viernes
        [6] sábado
       *[7] domingo
    } { $day } de { $month ->
        [1] enero
        [2] febrero
        [3] marzo
        [4] abril
        [5] mayo
        [6] junio
        [7] julio
        [8] agosto
        [9] septiembre
        [10] octubre
        [11] noviembre
       *[12] diciembre
    } de { $year }
common-today-at = hoy a las { $time }
common-yesterday-at = ayer a las { $time }
common-date-at = el { $date } a las { $time }

common-size = { $mm } mm
common-trainer = { $label }, { $size }
common-then = , luego { "" }
common-part = { $used }: { $minutes }
common-step-used = { $used }, { $position }
common-step-plain = { $step }, { $position }
common-minutes = { $minutes ->
        [one] { $minutes } minuto
       *[other] { $minutes } minutos
    }
common-minutes-span = de { $least } a { $most } minutos

common-on-back = boca arriba
common-side-lying = de lado
common-sitting = en posición sentada
common-standing = de pie
common-position-other = en la posición que describe tu plan

common-practice-trainer = Dilatador
common-practice-breathing = Respiración lenta
common-practice-belly-breathing = Respiración con el abdomen
common-practice-meditation = Meditación
common-practice-other = Otra práctica

common-rating-peak = molestia más alta
common-rating-before = molestia antes
common-rating-after = molestia después
common-rating-worry = preocupación

action-today = Volver a hoy
action-log = Anotar una sesión
action-log-breathing = Anotar una práctica de respiración
action-ladder = Tus pasos
action-suggestion = Qué dice ahora tu plan
action-signs = Algo no va bien
action-stop-and-call = A quién llamar
action-spoke = Hablé con…
action-entries = Lo que escribiste
action-plan = Tu plan en palabras
action-accept-programme = Añadir tu plan
action-confirm-step = Sí, esto es lo que uso ahora
action-step-check = Decir qué uso ahora
action-time-right = Sí, es { $date }, { $time }
action-feels-ready = Decir cómo veo el paso siguiente
action-try = Probarlo
action-stay = Quedarme donde estoy
action-stay-here = Quedarme aquí por ahora
action-stay-here-end = Continuar como dice mi plan
action-take-back = Retirar esto

trouble-free-space = No queda espacio en este dispositivo, así que esto no se ha guardado. Lo que escribiste antes está a salvo. Libera algo de espacio e inténtalo de nuevo.
trouble-open-again = Algo ha fallado en el archivo de tu diario. Abre el diario de nuevo y mira si está tu última anotación.
trouble-read-only = Ahora mismo el diario solo se puede leer. Libera algo de espacio en el dispositivo y ábrelo otra vez.
trouble-close-elsewhere = Este diario está abierto en otro sitio. Ciérralo allí e inténtalo de nuevo.
trouble-update = Este diario se escribió con una versión de Frond más nueva. Actualiza Frond para abrirlo. No se ha cambiado nada.
trouble-wrong-secret = Esto no abre el diario. Revisa lo que escribiste e inténtalo de nuevo.
trouble-code-asked = Este diario se abre con un código. Escribe tu código.
trouble-restore = Algo que hace falta para abrir este diario está dañado o no está. No se ha cambiado nada. Quizá lo recuperen tus doce palabras, o una copia.
trouble-not-a-diary = En esta carpeta no hay ningún diario. Revisa la carpeta o empieza en ella un diario nuevo.
trouble-already-there = Aquí ya hay un diario. Ábrelo, o elige otro lugar.
trouble-try-again = Esto no ha funcionado ahora mismo y no se ha escrito nada. Inténtalo de nuevo.

refusal-future = Esa hora todavía no ha llegado. Revisa la fecha y la hora.
refusal-no-such-entry = No existe esa anotación. Búscala en lo que escribiste.
refusal-machine-mark = Esta marca la escribió Frond por tu seguridad, así que no se puede cambiar.
refusal-other-kind = Una corrección cuenta el mismo tipo de cosa que antes. Si no es eso, retira la anotación y escribe una nueva.
refusal-no-such-step = Tu plan no tiene ese paso. Mira tus pasos.
refusal-no-programme = Todavía no hay un plan con pasos. Añade primero tu plan.
refusal-suggestion-changed = Algo ha cambiado desde que se mostró esto. Mira otra vez qué dice ahora tu plan.
refusal-not-open = Esto no está pendiente, o ya se cerró. Mira otra vez qué está pendiente.
refusal-plan = Este plan no se puede usar tal como está. Devuélvelo a quien lo escribió:
    { $why }
refusal-revision-in-use = Este plan ya lo estás usando. No se ha cambiado nada.
refusal-end-before-start = El último día es anterior al primero. Revisa los dos.
refusal-parts = Indica de 1 a 6 partes, cada una de 24 horas como máximo.
refusal-size-missing = Indica qué tamaño usaste.
refusal-no-sign = Elige al menos una opción.
refusal-sign-not-asked = Esto no se puede comunicar. Elige algo de la lista.
refusal-number-not-offered = Frond solo abre los números que se ven en esta pantalla.
refusal-no-session = Esto se pregunta sobre una sesión. Búscala en lo que escribiste.
refusal-too-long = Es demasiado largo para guardarlo. Acórtalo.

action-log-as-planned = Hecho según el plan
action-log-different = Algo fue distinto
action-practices = Qué practicar
action-breathing = Respirar
action-begin = Empezar
action-begin-step = Empezar tu práctica
action-go-to-practice = Volver a tu práctica
action-rate = Anotar cómo fue
action-later = Más tarde
action-not-now = Ahora no
action-done = Hecho
action-go-on = Continuar
action-screening = Contestar unas preguntas
action-hold-questions = Contestar las preguntas sobre aguantar el aire
action-other-step = Uso otro paso
action-not-mine = Esto no es mío
action-reminders = Recordatorios
action-calendar-file = Hacer un archivo de calendario
refusal-no-such-practice = Tu plan ya no tiene esa práctica. Mira otra vez qué hay para practicar.
refusal-no-running-time = Este dispositivo no puede contar el tiempo aquí. Practica sin el reloj y anótalo después.
refusal-too-many-reminders = Hay 20 recordatorios, que es el máximo. Quita primero uno.
refusal-not-put-off = No se puede aplazar: llegaría en tus horas de silencio o en otro día, o los recordatorios están apagados.

day-monday = lunes
day-tuesday = martes
day-wednesday = miércoles
day-thursday = jueves
day-friday = viernes
day-saturday = sábado
day-sunday = domingo
