# The safety text: every question about a sign, what each tier says, the care notes.
# A licensed clinician who speaks Spanish signs off this file as a whole; changing a word of it opens
# the sign-off again. Not reviewed yet.

## Headings of the groups of questions. Neutral on purpose.

group-feeling-and-control = Sensibilidad y control
group-pain-and-temperature = Dolor y temperatura
group-bleeding = Sangrado
group-pregnancy-and-birth = Embarazo y parto
group-chest-and-legs = Pecho y piernas
group-trainer-and-skin = Material y piel
group-urine-and-discharge = Vejiga e infección
group-treatment-and-medicine = Tratamientos y medicinas
group-mood-and-safety = Cómo estás

## The signs. "-ask" is the question, "-say" its name as the person would say it on the telephone.

sign-numb-saddle-ask = ¿Tienes adormecida la zona de los genitales, las nalgas o la parte interior de los muslos?
sign-numb-saddle-say = adormecimiento en los genitales o las nalgas
sign-cannot-pass-urine-ask = ¿No puedes empezar a orinar, o no lo notas, o no lo controlas?
sign-cannot-pass-urine-say = no poder empezar a orinar, notarlo o controlarlo
sign-bowel-control-lost-ask = ¿Has perdido el control para retener las heces?
sign-bowel-control-lost-say = pérdida del control para retener las heces
sign-both-legs-weak-ask = ¿Tienes débiles o adormecidas las dos piernas?
sign-both-legs-weak-say = debilidad o adormecimiento en las dos piernas
sign-severe-pain-ask = ¿Tienes un dolor muy fuerte, o un dolor que empeora rápido?
sign-severe-pain-say = un dolor muy fuerte, o un dolor que empeora rápido
sign-heavy-bleeding-ask = ¿Estás sangrando mucho?
sign-heavy-bleeding-say = un sangrado abundante
sign-fainting-ask = ¿Te has desmayado, o sientes que vas a desmayarte?
sign-fainting-say = un desmayo, o casi un desmayo
sign-very-high-temperature-ask = ¿Tienes la temperatura muy alta, o tienes escalofríos?
sign-very-high-temperature-say = temperatura muy alta o escalofríos
sign-vomiting-with-pelvic-pain-ask = ¿Estás vomitando y te duele la parte baja del vientre?
sign-vomiting-with-pelvic-pain-say = vómitos con dolor en la parte baja del vientre
sign-fever-with-rash-ask = ¿Tienes fiebre y además un sarpullido, sensación de desmayo o confusión? Presta especial atención si usas un tampón o acabas de usarlo.
sign-fever-with-rash-say = fiebre con sarpullido, sensación de desmayo o confusión
sign-pregnancy-severe-pain-ask = ¿Podría haber un embarazo, y tienes un dolor muy fuerte en la parte baja del vientre o en la punta del hombro?
sign-pregnancy-severe-pain-say = un dolor muy fuerte en la parte baja del vientre o en la punta del hombro, con un posible embarazo
sign-pregnancy-bleeding-with-pain-ask = ¿Podría haber un embarazo, y sangras y además tienes dolor o sensación de desmayo?
sign-pregnancy-bleeding-with-pain-say = sangrado con dolor o sensación de desmayo, con un posible embarazo
sign-after-birth-headache-or-vision-ask = ¿Has dado a luz hace poco, y tienes un dolor de cabeza muy fuerte o un cambio en la vista?
sign-after-birth-headache-or-vision-say = un dolor de cabeza muy fuerte o un cambio en la vista, y he dado a luz hace poco
sign-after-birth-soaking-pad-ask = ¿Has dado a luz hace poco, y el sangrado empapa una compresa (toalla sanitaria) en una hora o menos?
sign-after-birth-soaking-pad-say = un sangrado que empapa una compresa (toalla sanitaria) en una hora o menos, y he dado a luz hace poco
sign-after-birth-large-clots-ask = ¿Has dado a luz hace poco, y expulsas coágulos de sangre grandes?
sign-after-birth-large-clots-say = coágulos de sangre grandes, y he dado a luz hace poco
sign-chest-pain-ask = ¿Tienes dolor en el pecho?
sign-chest-pain-say = dolor en el pecho
sign-breathless-ask = ¿Te falta el aire?
sign-breathless-say = falta de aire
sign-trainer-stuck-with-pain-or-bleeding-ask = ¿Se ha quedado atascado un dilatador, y hay dolor o sangrado?
sign-trainer-stuck-with-pain-or-bleeding-say = un dilatador atascado, con dolor o sangrado
sign-fever-during-chemotherapy-ask = ¿Estás recibiendo quimioterapia, y tienes fiebre?
sign-fever-during-chemotherapy-say = fiebre, y estoy recibiendo quimioterapia
sign-thoughts-of-self-harm-ask = ¿Piensas en hacerte daño o en quitarte la vida?
sign-thoughts-of-self-harm-say = pensamientos de hacerme daño
sign-danger-at-home-ask = ¿Corres peligro en casa, o por causa de alguien cercano?
sign-danger-at-home-say = no estar a salvo en casa
sign-more-than-a-little-bleeding-ask = ¿Estás sangrando más que un poco?
sign-more-than-a-little-bleeding-say = más que un poco de sangrado
sign-pain-that-stays-ask = ¿Hay un dolor que sigue después de parar?
sign-pain-that-stays-say = un dolor que sigue después de parar
sign-unusual-discharge-ask = ¿Tienes un flujo que no es habitual en ti o que huele mal?
sign-unusual-discharge-say = un flujo que no es habitual o que huele mal
sign-fever-ask = ¿Tienes fiebre (38 °C o 100.4 °F, o más)?
sign-fever-say = fiebre
sign-bleeding-between-periods-or-after-sex-ask = ¿Has sangrado entre una regla y otra, o después de tener sexo?
sign-bleeding-between-periods-or-after-sex-say = sangrado entre una regla y otra, o después de tener sexo
sign-cannot-be-removed-ask = ¿Hay algo dentro que no puedes sacar?
sign-cannot-be-removed-say = algo dentro que no puedo sacar
sign-bleeding-when-pregnant-ask = ¿Hay un embarazo, y has sangrado algo, aunque sea una sola vez?
sign-bleeding-when-pregnant-say = sangrado durante el embarazo
sign-bleeding-after-menopause-ask = ¿Se te ha retirado la regla para siempre (menopausia), y has sangrado algo, aunque sea una sola vez?
sign-bleeding-after-menopause-say = sangrado después de la menopausia
sign-distress-ask = ¿Has sentido mucha angustia? ¿O como si algo del pasado volviera a ocurrir? ¿O como si estuvieras lejos de tu cuerpo?
sign-distress-say = mucha angustia o sentirme lejos de mi cuerpo
sign-painful-swollen-calf-ask = ¿Tienes una pantorrilla hinchada y con dolor?
sign-painful-swollen-calf-say = una pantorrilla hinchada y con dolor
sign-urine-or-stool-from-vagina-ask = ¿Te sale orina o heces por la vagina?
sign-urine-or-stool-from-vagina-say = salida de orina o heces por la vagina
sign-sores-or-blisters-ask = ¿Hay llagas o ampollas?
sign-sores-or-blisters-say = llagas o ampollas
sign-rash-or-burning-from-material-ask = ¿Hay sarpullido o ardor por el dilatador o el lubricante?
sign-rash-or-burning-from-material-say = sarpullido o ardor por el dilatador o el lubricante
sign-coil-thread-missing-or-stem-felt-ask = ¿Llevas un DIU, y no encuentras su hilo o notas su extremo duro?
sign-coil-thread-missing-or-stem-felt-say = un DIU cuyo hilo no encuentro o cuyo extremo duro noto
sign-blood-in-urine-ask = ¿Hay sangre en tu orina?
sign-blood-in-urine-say = sangre en la orina
sign-new-pain-passing-urine-ask = ¿Te duele al orinar, y antes no te dolía?
sign-new-pain-passing-urine-say = un dolor nuevo al orinar
sign-pregnancy-ask = ¿Hay un embarazo, o podría haberlo?
sign-pregnancy-say = un embarazo, o quizá un embarazo
sign-recent-birth-or-stitches-ask = ¿Has dado a luz o te han dado puntos hace poco?
sign-recent-birth-or-stitches-say = un parto o puntos recientes
sign-recent-pelvic-surgery-ask = ¿Te han operado hace poco en la pelvis, y quien te operó aún no ha dicho que puedes practicar?
sign-recent-pelvic-surgery-say = una operación reciente en la pelvis
sign-radiotherapy-not-cleared-ask = ¿Te han dado radioterapia en la pelvis, y nadie ha dicho todavía que puedes practicar?
sign-radiotherapy-not-cleared-say = radioterapia en la pelvis, y nadie ha dicho todavía que puedo practicar
sign-active-infection-ask = ¿Tienes ahora una infección?
sign-active-infection-say = una infección
sign-newly-fitted-coil-ask = ¿Te han puesto un DIU hace poco?
sign-newly-fitted-coil-say = un DIU puesto hace poco
sign-spotting-ask = ¿Has notado unas gotas de sangre?
sign-spotting-say = unas gotas de sangre
sign-blood-thinners-or-easy-bleeding-ask = ¿Tomas anticoagulantes, o sangras con facilidad?
sign-blood-thinners-or-easy-bleeding-say = anticoagulantes, o sangrar con facilidad
sign-current-chemotherapy-ask = ¿Estás recibiendo quimioterapia ahora?
sign-current-chemotherapy-say = quimioterapia
sign-pessary-ask = ¿Usas un pesario?
sign-pessary-say = un pesario
sign-allergy-to-material-ask = ¿Tienes alergia al material de tu dilatador, o a tu lubricante?
sign-allergy-to-material-say = alergia al dilatador o al lubricante
sign-a-caution-say = un aviso que sigue pendiente

## Stop and call. The lines stand in the order in which they are shown.

call-emergency = Por favor, llama ahora al { $number }. Es el número de emergencias de { $country }.
call-emergency-elsewhere = En otro país, llama al número de emergencias de allí.
call-emergency-unknown = Por favor, llama ahora al número de emergencias, el del país en el que estás.
call-emergency-not-guessed = Frond no sabe ese número y no lo adivina. Si tampoco lo sabes, pregunta a alguien que esté cerca.

call-stop-now = Para ahora. Si hay un dilatador dentro, deja que salga despacio. Nunca tires con fuerza.
call-pause-now = Por favor, deja los dilatadores por ahora. Si hay uno dentro, deja que salga despacio. Nunca tires con fuerza.
call-leave-it = Si no sale con facilidad, déjalo donde está y dilo por teléfono.
call-somewhere-safe = Si puedes, ve a un lugar donde te sientas a salvo, o con alguien de confianza.
call-eyes-open = Mantén los ojos abiertos. Siente los pies en el suelo y mira a tu alrededor. Tómate todo el tiempo que necesites.

call-no-answer-emergency = Si no consigues comunicar, llama otra vez, o pide a alguien cerca que llame.
call-today = Por favor, habla hoy con alguien, aunque la clínica esté cerrada.
call-clinician = Por favor, habla con { $clinician } cuanto antes, y antes de volver a usar un dilatador: { $contact }. Horario: { $hours }.
call-clinician-ask = Por favor, pregunta a { $clinician } antes de volver a usar un dilatador: { $contact }. Horario: { $hours }.
call-clinician-after = Cuando ya tengas ayuda, avisa también a { $clinician }: { $contact }. Horario: { $hours }.
call-out-of-hours = Fuera de este horario: { $line }
call-nobody-answers = Si nadie contesta: { $advice }
call-nobody-answers-unsaid = Si nadie contesta, usa el teléfono para fuera de este horario.
call-if-worse = Si empeora o no puede esperar, llama al { $number }. Es el número de emergencias de { $country }. En otro país, llama al número de emergencias de allí.
call-own-doctor = Por favor, habla con tu médica o médico de siempre cuanto antes, y antes de volver a usar un dilatador. Durante un embarazo o justo después de un parto, también puedes llamar a tu matrona.
call-own-doctor-ask = Por favor, pregunta a tu médica o médico de siempre antes de volver a usar un dilatador. Durante un embarazo o justo después de un parto, también puedes llamar a tu matrona.
call-own-doctor-after = Cuando ya tengas ayuda, avisa también a tu médica o médico de siempre o a tu matrona.
call-if-worse-unknown = Si nadie contesta y empeora o no puede esperar, llama al número de emergencias del país en el que estás. Frond no sabe ese número y no lo adivina.

call-dial-emergency = Llamar al { $number } ({ $country })
call-dial-clinician = Llamar a { $clinician }: { $number }
call-dial-out-of-hours = Fuera de horario: { $number }

call-read-emergency = Puedes leer esto en voz alta: «Necesito ayuda ahora. Esto es lo que noté: { $signs }. Lo noté { $when }».
call-read-emergency-undated = Puedes leer esto en voz alta: «Necesito ayuda ahora. Esto es lo que noté: { $signs }».
call-read-stop = Puedes leer esto en voz alta: «Practico en casa por mi salud pélvica. Paré por esto: { $signs }. Lo noté { $when }».
call-read-stop-undated = Puedes leer esto en voz alta: «Practico en casa por mi salud pélvica. Paré por esto: { $signs }».
call-read-ask = Puedes leer esto en voz alta: «Practico en casa por mi salud pélvica. Quiero preguntar antes de continuar, por esto: { $signs }. Lo noté { $when }».
call-read-ask-undated = Puedes leer esto en voz alta: «Practico en casa por mi salud pélvica. Quiero preguntar antes de continuar, por esto: { $signs }».
call-read-pause = Puedes leer esto en voz alta: «Practico en casa por mi salud pélvica. Mi plan dice que es el momento de hablar antes de continuar».

call-nobody-told = No se ha avisado a nadie. Frond no envía nada.

call-nothing-continues = Ahora no hay nada que practicar. Lo primero es conseguir ayuda.
call-breathing-continues = Los dilatadores esperan por ahora. Respirar con calma, sin aguantar el aire, está bien si te sienta bien. Escribir en tu diario también.
call-grounding-continues = Los dilatadores esperan por ahora. La respiración también puede esperar. Cuando sientas más calma, puedes respirar con suavidad, sin aguantar el aire, si quieres.
call-noted = Tu plan dice que unas gotas de sangre se pueden anotar, y que puedes continuar. Si son más que unas gotas, por favor, para y comunícalo como sangrado.

call-right-to-stop = Hiciste bien en parar.
call-right-to-ask = Hiciste bien en preguntar primero.
call-right-to-say = Hiciste bien en decirlo.
call-pause-is-planned = Esta pausa es parte de tu plan. No has hecho nada mal.

call-later = Más tarde, cuando hayas hablado con alguien, elige «Hablé con…». Hasta entonces los dilatadores esperan.

## When the questions are asked, and the answers.

group-ask = ¿Te pasa algo de esto?
not-sure-counts = Si tienes dudas, di «no lo sé». Cuenta como un sí, y está bien.
answer-yes = Sí
answer-no = No
answer-not-sure = No lo sé

anything-new-ask = ¿Hay algo nuevo desde la última vez?
anything-new-nothing = Nada nuevo
anything-new-something = Algo
anything-new-not-today = Hoy no
anything-new-not-today-said = Está bien. No hace falta un motivo.

screening-new-programme = Antes de empezar con este plan, unas preguntas sobre tu salud.
screening-new-revision = Tu plan ha cambiado. Unas preguntas sobre tu salud antes de continuar.
screening-gap = Qué bien que estás aquí otra vez. Unas preguntas sobre tu salud antes de continuar.
screening-interval = Tu plan hace estas preguntas de vez en cuando.

## General care.

care-lubricant = Usa un lubricante a base de agua. No uses vaselina ni nada hecho con aceite.
care-washing = Lava el dilatador con agua tibia y jabón, enjuágalo bien y sécalo.
care-smooth-surface = Antes de usarlo, comprueba con los dedos que la superficie es lisa. Si está agrietada o áspera, no lo uses.
care-personal-use = Tus dilatadores son solo para ti. No los compartas.

## Breathing.

breath-over-breathing = Si sientes mareo u hormigueo, o se te acelera el corazón, para y respira como lo haces normalmente.
breath-holds = No aguantes la respiración si hay o podría haber un embarazo, o si tienes la tensión alta (presión alta) o un problema de corazón o de pulmones. Pregúntaselo a tu especialista.
hold-pregnancy-ask = ¿Hay un embarazo, o podría haberlo?
hold-high-blood-pressure-ask = ¿Tienes la tensión alta (presión alta)?
hold-heart-trouble-ask = ¿Tienes un problema de corazón?
hold-lung-trouble-ask = ¿Tienes un problema de pulmones?

## Grounding, with open eyes, before any breathing.

grounding-stopped = Has parado. Ahora no se te pide nada más.
grounding-eyes = Mantén los ojos abiertos.
grounding-feet = Siente los pies, o lo que te sostiene.
grounding-see = Mira despacio a tu alrededor. Di el nombre de algunas cosas que ves.
grounding-hear = Escucha. Di el nombre de uno o dos sonidos.
grounding-touch = Toca algo que tengas cerca. ¿Está tibio o fresco? ¿Es áspero o liso?
grounding-time = Tómate todo el tiempo que necesites. Las preguntas pueden esperar.

## Cautions beside what is done: a practice, a note, a question, an erase, what does not open.

today-caution-stop = Puedes parar en cualquier momento. Parar siempre está bien.
today-caution-never-hurt = No tiene que doler. Nunca empujes ni fuerces.
today-caution-clinician = Lo que te diga tu especialista va antes que todo lo de esta pantalla.
breathing-holds-left-out = Las pausas sin respirar de tu plan se dejan fuera aquí, por tu seguridad. Pregunta por ellas a tu especialista.
hold-questions-why = Tu plan tiene momentos de aguantar el aire. Se dejan fuera hasta que se contesten estas preguntas, y siguen fuera si una de las respuestas es sí o no lo sé.
stopped-title = Paraste. Eso siempre está bien.
stopped-let-out = Si hay un dilatador dentro, deja que salga despacio. Nunca tires con fuerza.
stopped-ask = ¿Algo no va bien, en tu cuerpo o en cómo te sientes?
log-note-caution = Nadie lee esto hasta que lo compartas. Si corres peligro o piensas en hacerte daño, no lo escribas aquí: mira a quién llamar.
signs-how = Elige lo que corresponda. Si tienes dudas, elígelo: la duda cuenta como un sí.
questions-nobody-reads = Nadie las lee hasta que las compartas.
questions-cannot-wait = ¿Es algo que no puede esperar? Entonces llama. No lo escribas aquí para luego esperar.
phone-code-wait-emergency = En una emergencia, no esperes a esto. Llama al número de emergencias del país donde estás.
cannot-open-help = Si necesitas ayuda ahora, no esperes a esto. Llama a la persona que te atiende, o al número de emergencias del país donde estás.
erase-caution-stays = Un aviso o una pausa pendiente se queda pendiente hasta que hayas hablado con alguien.
