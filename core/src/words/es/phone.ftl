# Lo que solo necesita un teléfono: antes del cierre, el código, el diario entero, ayudas de los formularios, lo que
# se dice en voz alta. Las palabras que salen de Frond están en leaving.ftl.

## Antes del cierre. Cualquiera puede leerlo: nada dice para qué sirve el programa.

phone-empty-title = Aquí todavía no hay nada
phone-empty-says = Lo que escribas aquí se queda en este teléfono, y no se envía nada. Puedes empezar ya.
phone-empty-copy = Tengo una copia de antes
phone-code-title = Tu código
phone-code-asks = Escribe el código que elegiste.
phone-code = Código
phone-code-open = Abrir
phone-code-forgotten = No sé el código
phone-code-wait-seconds = { $count ->
        [one] Puedes intentarlo de nuevo dentro de un segundo.
       *[other] Puedes intentarlo de nuevo dentro de { $count } segundos.
    }
phone-code-wait-minutes = { $count ->
        [one] Puedes intentarlo de nuevo dentro de un minuto.
       *[other] Puedes intentarlo de nuevo dentro de { $count } minutos.
    }
phone-code-wait-nothing-lost = No se pierde nada, por muchas veces que lo intentes.
phone-error-code-missing = Escribe primero el código.
phone-error-code-wrong = Es otro código. Inténtalo de nuevo; no se pierde nada.

## El código.

action-code-choose = Elegir un código
action-code-change = Cambiar el código
action-lock = Cerrar ahora
phone-code-what = Con un código, Frond lo pide cuando se abre, y otra vez cuando vuelves a él después de un rato. Sin código, quien pueda desbloquear este teléfono puede abrir tu diario.
phone-code-own = Un código es un cierre propio, distinto del bloqueo del teléfono. Elige uno que no abra nada más y que otras personas no sepan.
phone-code-no-wipe = Un código equivocado no borra nada. Después de varios hay que esperar.
phone-code-phrase-first = Todavía no hay doce palabras. Lo mejor es hacerlas primero.
phone-code-new = Código nuevo
phone-code-new-hint = Cifras, letras o palabras. Cuanto más largo, más difícil de adivinar.
phone-code-again = El mismo código otra vez
phone-code-keep = Usar este código
phone-code-remove-title = Estar sin código
phone-code-remove-says = Entonces Frond no pide nada, y quien pueda desbloquear este teléfono puede abrir tu diario.
phone-code-now = El código que usas ahora
phone-code-remove = Quitar el código
phone-code-set-title = Hecho
phone-code-set = Desde ahora Frond pide este código.
phone-code-removed = Desde ahora Frond no pide ningún código.
phone-error-code-short = { $least ->
        [one] Elige al menos una cifra o letra.
       *[other] Elige al menos { $least } cifras o letras.
    }
phone-error-codes-differ = Los dos códigos no son iguales. Escribe el código nuevo dos veces.

## Lo que un teléfono dice de su cierre, junto a lo que se dice de cada diario.

phone-lock-key = Tu diario está cerrado con una clave que se queda en este teléfono. Quien se lleve sus archivos no puede abrirlos.
phone-lock-no-code = Todavía no tiene un código propio. Quien pueda desbloquear este teléfono puede abrirlo.
phone-lock-code = Frond pide además tu código. Nadie más lo tiene, y Frond no lo guarda.
phone-lock-code-title = El código
phone-lock-phrase-none = Todavía no hay ninguna. Doce palabras en papel abren tu diario si pierdes este teléfono u olvidas el código. Sin ellas, el diario se pierde entonces.
phone-lock-limit-forgotten = Nadie puede averiguar un código olvidado, tampoco Frond. Entonces solo sirve la frase de recuperación.
phone-lock-limit-keys = Si se quita el bloqueo del teléfono o se restablece el teléfono, su clave puede desaparecer. Entonces la frase de recuperación abre lo que queda.

## Las doce palabras.

phone-phrase-alone = Hazlo cuando nadie más pueda ver la pantalla ni oír cómo se lee en voz alta.
phone-phrase-paper = Escríbelas en papel, no en este teléfono. Quien encuentre las palabras puede abrir tu diario.
phone-phrase-check = Mira tu papel. Así es seguro que las palabras estarán ahí cuando las necesites.
phone-phrase-hint = En su orden. Las mayúsculas y minúsculas dan igual, y bastan las cuatro primeras letras de cada palabra.
phone-phrase-opens = Escribe las doce palabras de tu papel. Después Frond no pide ningún código hasta que elijas uno nuevo.
phone-phrase-gone = Sin estas palabras nadie puede abrirlo, tampoco Frond. Para empezar de cero, quita Frond de este teléfono e instálalo otra vez. Entonces lo que escribiste desaparece.
phone-phrase-opened = Se abrió con tus doce palabras. Ahora Frond no pide ningún código. Puedes elegir uno nuevo.
phone-phrase-opened-title = Tu diario está abierto
phone-error-other-phrase = Estas palabras no abren este diario. Revisa cada palabra y el orden.

## Copias, borrar, un plan.

phone-copy-name = Su nombre no dice nada, pero que hay un archivo se puede ver donde lo pongas.
phone-look-first = Mirar no cambia nada. Se te dice qué hay en una copia antes de que ocupe el lugar de nada.
phone-look-into = Mirar qué contiene
phone-erase-look = Todavía no se borra nada. Primero se te dice qué se iría.
phone-plan-scan = Si te dieron un código para escanear, apunta a él con la cámara de este teléfono y abre el enlace con Frond. Si no te lo ofrece, copia el enlace y pégalo abajo.
phone-erased-rest = Ya no llega ningún recordatorio. Lo que está en un calendario se queda ahí. La aplicación sigue en este teléfono hasta que la quites.
phone-error-day-missing = Elige un día.
phone-error-link-missing = Elige un archivo, o pega el enlace.

## El marco de cada pantalla.

phone-leave = Salir
phone-leave-spoken = Salir ya. Frond se cierra y desaparece de la lista de aplicaciones abiertas.
phone-hide = Ocultar
phone-hide-spoken = Ocultar enseguida. Se ve una pantalla sin contenido. Frond sigue en la lista de aplicaciones abiertas.
phone-back = Atrás
phone-loading = Un momento
phone-loading-long = Esto tarda unos segundos.
phone-close = Cerrar
phone-fault = Algo ha fallado dentro de Frond, y esto no se mostró. Vuelve atrás y ábrelo de nuevo. Lo que se guardó sigue ahí.

## Formularios.

phone-required = Esto hace falta.
phone-choose-day = Elegir un día
phone-choose-time = Elegir una hora
phone-no-day = No hay ningún día elegido.
phone-no-time = No hay ninguna hora elegida.
phone-empty-again = Volver a dejarlo vacío
phone-show-secret = Mostrar lo que escribo
phone-hide-secret = Ocultar lo que escribo
phone-secret-shown = Ahora se ve lo que escribes.
phone-secret-hidden = Ahora no se ve lo que escribes.
phone-choose-file = Elegir un archivo
phone-file-chosen = Hay un archivo elegido.
phone-paste = Pegar
phone-clipboard-cleared = El enlace se ha quitado del portapapeles.
phone-times = ¿A qué horas? Hasta seis.
phone-add-time = Añadir una hora
phone-remove-time = Quitar esta hora
phone-error-time-missing = Elige una hora.

## Archivos y llamadas.

phone-file-where = ¿Adónde va?
phone-file-share = Compartirlo
phone-file-save = Guardarlo en este teléfono o en otro sitio
phone-file-sealed = Va sellado. La aplicación que elijas ve que hay un archivo, pero no lo que contiene.
phone-saving = Se está guardando.
phone-saved = Se ha guardado. No se ha avisado a nadie.
phone-not-saved = No se ha guardado nada.
phone-error-save = No se pudo guardar ahí. Elige otro sitio.
phone-reading = Se está leyendo.
phone-error-large = Este archivo es más grande de lo que admite Frond. Elige otro.
phone-error-read = Este archivo no se pudo leer. Elige otro.
phone-no-files = Este teléfono no tiene ninguna aplicación que pueda elegir o guardar un archivo. No se ha hecho nada.
phone-no-calls = Este teléfono no tiene ninguna aplicación para llamar. Llama a este número desde otro teléfono.

## Si el teléfono puede mostrar recordatorios.

phone-notices-title = ¿Se pueden mostrar recordatorios?
phone-notices-why = El teléfono te preguntará si Frond puede mostrar recordatorios. Solo dicen las palabras sencillas que elegiste. Todo lo demás funciona sin ellos.
phone-notices-allow = Que pregunte el teléfono
phone-notices-refused = El teléfono no deja que Frond muestre recordatorios. Todo lo demás funciona. Puedes cambiarlo en los ajustes del teléfono.
phone-notices-settings = Abrir los ajustes del teléfono

## Dicho en voz alta, para quien escucha o siente.

phone-less = Menos
phone-more = Más
phone-of-ten = { $number } de 10
phone-figure = { $number }
phone-opened = abierto
phone-folded = plegado
phone-chosen = elegido
phone-not-chosen = sin elegir
phone-to-put-right = Por corregir
phone-clock = Tiempo practicado
phone-pacer = Una respiración para seguir
phone-pacer-buzz = Una vibración corta: toma aire. Una larga: suéltalo. Dos cortas: retenlo con suavidad.
phone-screen-on = La pantalla se queda encendida mientras practicas.
