# A summary before it leaves: what is in it, what is not, who can open it. The person decides.

summary-title = Lo que entregas
summary-sessions = { $count ->
        [0] Ninguna sesión
        [one] 1 sesión: qué se usó, cuánto duró, cómo acabó, cómo se sintió
       *[other] { $count } sesiones: qué se usó, cuánto duró, cómo acabó cada una, cómo se sintió
    }
summary-questions = { $count ->
        [0] Ninguna pregunta para la visita
        [one] 1 pregunta para la visita
       *[other] { $count } preguntas para la visita
    }
summary-notes = { $count ->
        [0] Ninguna nota
        [one] 1 nota tuya
       *[other] { $count } notas tuyas
    }
summary-rated = { $count ->
        [0] Ninguna valoración de una actividad o una meta
        [one] 1 valoración de una actividad o una meta
       *[other] { $count } valoraciones de actividades y metas
    }
summary-signs = Todo lo que no iba bien y sigue pendiente, sean cuales sean los días que elijas
summary-plan = Tu plan, el paso que usas y lo que el plan dice ahora, con los motivos
summary-before = No va: todo lo anterior al { $day }, menos tu plan y las marcas que escribe Frond
summary-after = No va: todo lo posterior al { $day }, menos tu plan y las marcas que escribe Frond
summary-no-notes = No van: tus notas
summary-no-questions = No van: tus preguntas
summary-narrowing-shows = Quien lo lea verá que se dejó algo fuera, y cuál de estas cosas fue. Nadie ve qué decía.
summary-never = Nunca va: lo que te hace ilusión y cómo tienes la aplicación. Eso es solo cosa tuya.
summary-put-right = { $count ->
        [one] 1 anotación que corregiste: también se ve la primera versión, en números y sin tus palabras
       *[other] { $count } anotaciones que corregiste: también se ven las primeras versiones, en números y sin tus palabras
    }
summary-left-out = { $count ->
        [one] 1 anotación que dejaste fuera: se ve como dejada fuera, en números y sin tus palabras
       *[other] { $count } anotaciones que dejaste fuera: se ven como dejadas fuera, en números y sin tus palabras
    }
summary-opens-recipients = El archivo solo se abre con una clave que tiene: { $names }. Tú tampoco puedes abrirlo.
summary-opens-passphrase = Quien tenga el archivo y la contraseña puede abrirlo. Di la contraseña por un camino distinto del que usas para el archivo.
summary-opens-anyone = Cualquiera que reciba el archivo puede leerlo. No va sellado.
summary-time-alone = Con él va esto: quieres un rato a solas. No se vuelve a mostrar aquí.
summary-decide = Lo decides tú. No hace falta que entregues nada.
summary-cannot-take-back = Lo que se entregó no se puede retirar, y borrar tu diario no lo alcanza.
summary-nobody-told = No se ha avisado a nadie. Frond no envía nada: el archivo lo entregas tú.
