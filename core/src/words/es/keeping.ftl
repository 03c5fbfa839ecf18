# How the diary is kept: what opens it, copies, damage, erasing, restoring.

keeping-title = Cómo se guarda tu diario
keeping-phrase-title = Frase de recuperación
keeping-phrase-there = Tu diario también se abre con las doce palabras que apuntaste. Guárdalas lejos de este dispositivo, donde solo tú las encuentres.
keeping-phrase-none = Todavía no hay ninguna. Doce palabras en papel abren tu diario si pierdes este dispositivo o su contraseña. Sin ellas, quien olvida la contraseña ha perdido el diario.
keeping-copy-title = Una copia para otro sitio
keeping-copy-needs-phrase = Una copia que guardas en otro sitio se abre con tu frase de recuperación, así que haz primero la frase.
keeping-copy-none = Todavía no hay ninguna. Si se pierde este dispositivo, con él se pierde lo que escribiste. Una copia va sellada: solo la abren tus doce palabras.
keeping-copy-made = La última se hizo el { $when }. Lo que escribiste después no está en ella.
keeping-backup-title = Copias en este dispositivo
keeping-backup = { $count ->
        [one] Una anotación, copia hecha { $when }
       *[other] { $count } anotaciones, copia hecha { $when }
    }
keeping-backup-unreadable = Una copia que no se puede leer
keeping-backup-none = Todavía no hay ninguna. La primera se hace antes de tu primera anotación de otro día.
keeping-backup-how = Se hace una antes de la primera anotación de cada día en que escribes. Se guardan las tres más nuevas.
keeping-limit-forgotten = Nadie puede averiguar una contraseña olvidada, tampoco Frond. Entonces solo sirve la frase de recuperación.
keeping-limit-device = Quien pueda ver cómo escribes, o controle este dispositivo, puede leer lo mismo que tú.

keeping-set-back-title = Este diario es una copia más antigua
keeping-set-back = Tuvo anotaciones que ya no están en él. Alguien o algo puso aquí una copia más antigua, por ejemplo un programa de copias.
keeping-set-back-go-on = Si tienes una copia más nueva, vuelve a ponerla. Si no, puedes continuar desde aquí: queda escrito que faltan anotaciones.
keeping-set-back-keys = Es una copia de antes de que borraras algo o cambiaras lo que lo abre. Lo que borraste puede volver a leerse en ella.
keeping-erase-again = Si tienes una copia más nueva, vuelve a ponerla. Si no, mira tus anotaciones y borra otra vez lo que no quieras que esté.
keeping-read-only-title = Ahora mismo no se puede escribir nada
keeping-missing-title = Faltan anotaciones
keeping-missing = { $count ->
        [one] Una anotación ya no se puede leer. Tus anotaciones muestran entre qué días.
       *[other] { $count } anotaciones ya no se pueden leer. Tus anotaciones muestran entre qué días.
    }
keeping-missing-backup = Puede que una copia de este dispositivo aún las tenga. Puedes mirarla antes de decidir.
keeping-missing-tell = Hasta que hayas hablado con tu especialista, no se sugiere nada más allá de quedarse.
keeping-aside-title = Se guardaron las partes dañadas
keeping-aside = Los datos originales de lo que se dañó se guardaron junto al diario. No se ha tirado nada de ellos.

action-keeping = Cómo se guarda el diario
action-new-passphrase = Cambiar la contraseña
action-make-phrase = Hacer una frase de recuperación
action-new-phrase = Hacer una nueva frase de recuperación
action-make-copy = Hacer una copia para otro sitio
action-restore = Mirar una copia de este dispositivo
action-restore-this = Recuperar esta copia
action-restore-copy = Recuperar una copia de otro sitio
action-leave-as-is = Dejar todo como está
action-erase = Borrar para siempre
action-erase-all = Borrar todo para siempre
action-keep-it = Conservarlo
action-try-again = Intentarlo de nuevo
action-open-by-phrase = Abrir con la frase de recuperación
action-start-new = Empezar un diario nuevo

erase-title = ¿Borrar?
erase-count = { $count ->
        [one] Se borra una anotación, con sus correcciones.
       *[other] Se borran { $count } anotaciones, con sus correcciones.
    }
erase-day = Se va todo lo que contaste del { $day }.
erase-days = Se va todo lo que contaste del { $from } al { $to }.
erase-stays = Tu plan y tus ajustes se quedan.
erase-mark = Queda una marca de que se borró algo. No dice nada de lo que era.
erase-step-asked = Se te pregunta otra vez qué paso usas, y lo que cuenta para avanzar empieza de cero. Los días sin anotaciones cuentan como días sin práctica.
erase-for-good = Nadie puede recuperarlo.
erase-copies = Las copias de este dispositivo también se sustituyen.
erase-all = Se borra todo lo que escribiste, tu plan, las claves y las copias de este dispositivo.
erase-all-open = Sigue pendiente algo por lo que llamar. Apunta a quién llamar antes de borrar.
erase-reach-copies = Las copias y los resúmenes que diste o pusiste en otro sitio quedan fuera de alcance.
erase-reach-plan = Lo que escribió tu especialista en tu plan no cambia.
erase-reach-memory = Los chips de memoria de un dispositivo pueden guardar restos durante un tiempo. Están sellados, y las claves se destruyen.

restore-title = ¿Recuperar esta copia?
restore-made = Se hizo { $when }.
restore-entries = { $count ->
        [one] Tiene una anotación.
       *[other] Tiene { $count } anotaciones.
    }
restore-newest = La más nueva se escribió { $when }.
restore-missing = { $count ->
        [one] Una de sus anotaciones no se puede leer.
       *[other] { $count } de sus anotaciones no se pueden leer.
    }
restore-other-diary = Es de un diario distinto del que hay aquí.
restore-replaces = Ocupa el lugar del diario de aquí, que se guarda aparte.
restore-fewer = { $count ->
        [one] El diario de aquí tiene una anotación más.
       *[other] El diario de aquí tiene { $count } anotaciones más.
    }
restore-asks-step = Se te pregunta qué tamaño usas ahora.
restore-no-step-up = Hasta que contestes, no se sugiere nada más allá de quedarse.

cannot-open-title = Tu diario no se abre
cannot-open-untouched = No se ha cambiado nada.

today-no-backup = No se pudo hacer la copia de hoy. Lo que escribes se guarda de todos modos. Libera algo de espacio en el dispositivo.
today-set-back = Este diario es una copia más antigua: faltan anotaciones que escribiste.

refusal-nothing-to-erase = Ahí no hay nada que se pueda borrar.
refusal-no-phrase = Todavía no hay una frase de recuperación. Haz una primero; la copia se abre con ella.
refusal-not-a-copy = Este archivo no es una copia de un diario, o está tan dañado que no se puede leer. Elige otro.
trouble-wrong-phrase = Estas palabras no abren esta copia. Se hizo para otra frase de recuperación.
