# Resúmenes que han vuelto, y la página de la visita. Lo lee una profesional.

cabinet-at = { $day }, { $time }

# La lista de personas.
cabinet-people = Resúmenes
cabinet-people-count = { $people ->
        [one] 1 diario
       *[other] { $people } diarios
    }, { $summaries ->
        [one] 1 resumen
       *[other] { $summaries } resúmenes
    }.
cabinet-people-found = { $count ->
        [0] No se encontró nada. Acorte lo que busca.
        [one] 1 encontrado.
       *[other] { $count } encontrados.
    }
cabinet-people-page = Página { $page } de { $pages }.
cabinet-empty = Aquí no hay todavía ningún resumen.
cabinet-empty-how = Un resumen es un archivo que la persona exporta de su diario y le entrega: sellado para la clave de su plan, con una frase de paso, o abierto. Incorpórelo más abajo. Se guarda aquí sellado para su clave, venga como venga.
cabinet-empty-invented = Para probarlo sin nadie: «frond demo» escribe un diario inventado con su resumen.
cabinet-find = Buscar un apodo
cabinet-find-hint = Basta una parte. También sirve el principio de la marca de un diario.
cabinet-order = En este orden
cabinet-order-open = primero lo que está abierto
cabinet-order-newest = primero el resumen más nuevo
cabinet-order-nickname = por apodo
cabinet-order-longest = primero quien lleva más tiempo sin practicar
cabinet-look = Ver
cabinet-page-before = Página anterior
cabinet-page-after = Página siguiente
cabinet-no-nickname = Sin plan (diario { $id })
cabinet-time-alone = Tiempo a solas, por favor
cabinet-open-emergency = { $count ->
        [one] 1 señal abierta: urgencia
       *[other] { $count } señales abiertas, la más grave: urgencia
    }
cabinet-open-stop = { $count ->
        [one] 1 señal abierta: parar y llamar
       *[other] { $count } señales abiertas, la más grave: parar y llamar
    }
cabinet-open-ask-first = { $count ->
        [one] 1 señal abierta: preguntar antes
       *[other] { $count } señales abiertas, la más grave: preguntar antes
    }
cabinet-open-note = { $count ->
        [one] 1 señal abierta: solo anotada
       *[other] { $count } señales abiertas: solo anotadas
    }
cabinet-paused = En pausa por la regla
cabinet-fuller = Otro resumen, hecho el { $made }, contiene más entradas: lea también ese
cabinet-fuller-open = En ese hay una señal o una pausa abierta
cabinet-made = Hecho el { $made }; muestra del { $first } al { $last }
cabinet-practised = { $sessions ->
        [one] 1 sesión
       *[other] { $sessions } sesiones
    }, la última el { $last }
cabinet-not-practised = No contiene ninguna sesión
cabinet-step = En uso: { $step }
cabinet-questions = { $count ->
        [one] 1 pregunta para la visita
       *[other] { $count } preguntas para la visita
    }
cabinet-narrowed = No es el diario entero: ella eligió qué entregar
cabinet-older-too = { $count ->
        [one] y 1 resumen más
       *[other] y { $count } resúmenes más
    }
cabinet-same-nickname = Otro diario tiene el mismo apodo. La marca de este empieza por { $id }.

# Incorporar archivos.
cabinet-bring = Incorporar resúmenes
cabinet-bring-files = Archivos
cabinet-bring-files-hint = Uno o muchos a la vez. Se leen en este ordenador y no van a ninguna parte.
cabinet-bring-files-all = O una carpeta entera
cabinet-bring-path = O una carpeta de este ordenador, por su ruta
cabinet-bring-path-hint = Para muchísimos archivos. La carpeta se lee y se deja como está.
cabinet-bring-passphrase = Frase de paso, si se sellaron con una
cabinet-bring-key-choice = Si un diario que usted conoce viene con otra clave
cabinet-bring-new-key = Aceptar la clave nueva: la persona me dijo que empezó de nuevo o tiene otro teléfono
cabinet-bring-now = Incorporar
cabinet-bring-none = Elija un archivo o indique una carpeta.
cabinet-bring-no-folder = Esta carpeta no se puede leer. Compruebe su ruta.
cabinet-bring-busy = Todavía se están incorporando otros archivos. Espere a que termine.
cabinet-progress = { $done } de { $total }
cabinet-progress-bar = Cuánto lleva
cabinet-look-again = Ver cuánto lleva ahora
cabinet-bringing = Se están incorporando resúmenes
cabinet-brought = Lo que se incorporó
cabinet-reading = Se están leyendo de nuevo los resúmenes
cabinet-read = Se leyeron de nuevo los resúmenes
cabinet-reading-why = Lo anotado sobre ellos para esta lista faltaba o estaba dañado. No se ha perdido nada: se vuelve a hacer a partir de los archivos sellados.
cabinet-brought-nothing = No contenía ningún archivo.
cabinet-brought-new = { $count ->
        [one] Se incorporó 1 resumen.
       *[other] Se incorporaron { $count } resúmenes.
    }
cabinet-brought-older = { $count ->
        [one] Se incorporó 1 resumen más antiguo que otro que usted tiene del mismo diario. Si se envió como el más nuevo, pregunte por qué.
       *[other] Se incorporaron { $count } resúmenes más antiguos que otros que usted tiene de los mismos diarios. Si alguno se envió como el más nuevo, pregunte por qué.
    }
cabinet-brought-known = { $count ->
        [one] 1 ya estaba aquí.
       *[other] { $count } ya estaban aquí.
    }
cabinet-brought-refused = { $count ->
        [one] 1 archivo no se incorporó; no se guardó nada de él.
       *[other] { $count } archivos no se incorporaron; no se guardó nada de ellos.
    }
cabinet-brought-failed = El disco no lo guardó todo. Compruebe que haya espacio e incorpore los archivos otra vez; lo que ya está aquí se reconoce.
cabinet-refused = { $count ->
        [one] Sin incorporar: 1 archivo
       *[other] Sin incorporar: { $count } archivos
    }
cabinet-refused-more = Y { $count } más.
cabinet-file-without-name = Un archivo sin nombre
cabinet-see-people = A los resúmenes
cabinet-see-person = Leerlo
cabinet-refused-other-record = Es un registro de salud de otro programa. Frond solo lee sus propios resúmenes.
cabinet-refused-passphrase = Se selló con una frase de paso. Incorpórelo otra vez e indique la frase.
cabinet-refused-wrong-passphrase = La frase de paso no lo abre. Compruébela e inténtelo otra vez.
cabinet-refused-other-key = Nombra un diario que usted conoce y está firmado con otra clave. Pregunte a la persona si empezó de nuevo o tiene otro teléfono; si es así, incorpórelo otra vez y acepte la clave nueva.
cabinet-refused-unreadable = No se puede leer. Compruebe que se copió entero.
cabinet-refused-not-sealed = No se pudo sellar para su clave, así que no se guardó. Inténtelo otra vez.
cabinet-refused-no-room = No hay espacio en el disco. Libere un poco e inténtelo otra vez.
cabinet-refused-not-kept = No se pudo guardar. Compruebe la carpeta del escritorio e inténtelo otra vez.
cabinet-refused-too-long = Es más largo de lo que puede ser un resumen. Compruebe que es el archivo correcto.
cabinet-refused-not-a-summary = No es un resumen de Frond. Compruebe que es el archivo correcto.
cabinet-refused-damaged = Está dañado. Pida que se lo envíen otra vez.
cabinet-refused-form = Su firma es válida, pero no tiene la forma que conoce este Frond. Actualice Frond o pídalo otra vez.
cabinet-refused-newer = Lo hizo un Frond más nuevo. Actualice Frond para leerlo.
cabinet-refused-wrong-key = Está sellado para la clave de otra persona. Pida que lo sellen para la clave del plan.
cabinet-refused-work = Abrirlo exige más trabajo del que pediría ningún Frond. No se fíe de él; pídalo otra vez.
cabinet-refused-signature = La firma no encaja: algo se cambió después de hacerlo. No se fíe de él; pídalo otra vez.

# Lo que le pasa al archivador.
cabinet-unfit = { $count ->
        [one] 1 archivo sellado de la carpeta del escritorio no está en esta lista
       *[other] { $count } archivos sellados de la carpeta del escritorio no están en esta lista
    }
cabinet-unfit-damaged = dañados o ilegibles: { $count }
cabinet-unfit-not-opened = no sellados para sus claves, o que no son resúmenes: { $count }
cabinet-unfit-other-key = un diario conocido con otra clave: { $count }
cabinet-pins-lost = La lista de las marcas por las que se conocen los diarios estaba dañada. Se volvió a hacer a partir de los resúmenes de aquí, y la dañada queda apartada. Si tiene una marca apuntada en papel, vale la pena compararla.

# Un diario.
cabinet-visit-window = Resumen
cabinet-notes-open = Desplegar las notas
cabinet-visit-back = Todos los resúmenes
cabinet-cannot-open = Este resumen ya no se puede abrir: su archivo está dañado, falta, o está sellado para otras claves. Si lo tiene en otro sitio, incorpórelo otra vez.
cabinet-apart = Un resumen hecho el { $made } contiene { $count ->
        [one] 1 entrada del { $first } que no está en este
       *[other] { $count } entradas del { $first } al { $last } que no están en este
    }. Entre los dos no se borró nada que lo explique.
cabinet-apart-sign = Ahí hay anotada una señal.
cabinet-apart-ask = Quizá dos teléfonos llevan este diario, se restauró desde una copia o el reloj del teléfono estaba mal. Pregunte cuál se usa y lea los dos antes de cambiar el plan.
cabinet-apart-read = Leer el otro
cabinet-others = Otros resúmenes de este diario
cabinet-others-says = { $count ->
        [one] 1 resumen más llegó antes que este o junto a él.
       *[other] { $count } resúmenes más llegaron antes que este o junto a él.
    }
cabinet-others-newer = Este no es el resumen más nuevo del diario.
cabinet-others-fuller = Sin embargo, contiene más entradas que uno más nuevo: el reloj del teléfono estaba mal o dos teléfonos llevan este diario.
cabinet-others-before = Uno más antiguo muestra días desde el { $first } que este no muestra.
cabinet-others-more = Uno más antiguo contiene más entradas: desde entonces algo se borró, se dejó fuera o se perdió por un daño.
cabinet-others-keys = { $count ->
        [one] Se aceptó una clave para este diario.
       *[other] Se aceptaron { $count } claves para este diario, una tras otra.
    }
cabinet-other = Hecho el { $made }; muestra del { $first } al { $last }, { $entries ->
        [one] 1 entrada
       *[other] { $entries } entradas
    }
cabinet-other-newer = Más nuevo: hecho el { $made }; muestra del { $first } al { $last }, { $entries ->
        [one] 1 entrada
       *[other] { $entries } entradas
    }
cabinet-remove = Quitar los resúmenes de este diario
cabinet-remove-says = Los archivos sellados de este diario se borran de este ordenador para siempre. Las copias de otros sitios quedan fuera de alcance. La marca por la que se conoce el diario se queda.
cabinet-remove-now = Borrarlos

# Otra regla.
cabinet-what-if = Lo que habría dicho otra regla
cabinet-insight-all = Tiempo en cada paso, en todos los diarios
cabinet-what-if-all = Lo que diría otra regla, en todos los diarios
cabinet-what-if-about = La regla en vigor está junto a otra en el mismo diario. La otra sustituye a todas las reglas del plan, también las de pasos sueltos, y a lo que quedó en pausa con la anterior. El diario se llevó con la anterior: con otra regla ella quizá habría hecho otras cosas.
cabinet-what-if-about-all = En cada diario, su propia regla está junto a la otra. La otra sustituye a todas las reglas del plan, también las de pasos sueltos. Los diarios se llevaron con sus propias reglas.
cabinet-what-if-not-saved = Mirar no guarda nada.
cabinet-what-if-narrowed = De este resumen se dejaron fuera entradas, así que la regla no se puede repetir con él.
cabinet-what-if-choose = Qué regla probar
cabinet-what-if-desks = Una regla de este escritorio
cabinet-rule-of-plan = { $name }, revisión { $revision }
cabinet-rule-of-draft = { $name }, borrador de la revisión { $revision }
cabinet-revise = Escribir una revisión nueva de este plan
cabinet-no-plan = En este resumen no hay ningún plan que se pueda revisar.
cabinet-what-if-file = Un archivo con una regla o un plan
cabinet-what-if-text = O la regla misma, como JSON
cabinet-what-if-text-hint = Cambie lo que hay aquí, o pegue otra.
cabinet-what-if-compare = Comparar
cabinet-what-if-compare-all = Comparar en todos los diarios
cabinet-what-if-revise = Hacer de esto una revisión nueva
cabinet-what-if-revise-says = Abre el editor con el plan en vigor y esta regla. Nada se firma ni se entrega hasta que usted lo haga allí.
cabinet-what-if-error = Esto no es una regla que se pueda leer: { $why }
cabinet-what-if-none = Elija un archivo o escriba la regla.
cabinet-what-if-no-rule = Este plan no tiene una regla para todos sus pasos.
cabinet-what-if-reads = La regla que se prueba
cabinet-rule-own = Regla en vigor
cabinet-rule-tried = Regla probada
cabinet-when = Cuándo
cabinet-told = Contado
cabinet-when-made = Cuando se hizo el resumen
cabinet-differs = difiere
cabinet-differs-column = ¿Lo mismo?
cabinet-what-if-counts = { $count ->
        [0] Dicen lo mismo después de cada entrada ({ $entries }).
        [one] Difieren después de 1 entrada de { $entries }.
       *[other] Difieren después de { $count } entradas de { $entries }.
    }
cabinet-first-differences = Las primeras diferencias
cabinet-all-entries = Todas las entradas
cabinet-what-if-diaries = { $diaries ->
        [one] Se comparó 1 diario
       *[other] Se compararon { $diaries } diarios
    }; al final las dos reglas dicen cosas distintas en { $now ->
        [0] ninguno
       *[other] { $now }
    }.
cabinet-what-if-ever = En alguna entrada difieren en { $count ->
        [0] ninguno
        [one] 1 diario
       *[other] { $count } diarios
    }.
cabinet-what-if-left-out = { $count ->
        [one] 1 diario no se pudo repetir: se dejaron fuera entradas, o no se puede abrir.
       *[other] { $count } diarios no se pudieron repetir: se dejaron fuera entradas, o no se pueden abrir.
    }
cabinet-what-if-table = Cuántos diarios, según lo que dice cada regla al final
cabinet-what-if-list = Diarios en los que difieren
cabinet-what-if-more = Y { $count } más.
cabinet-what-if-same-now = Al final las dos dicen: { $own }
cabinet-what-if-now = Al final: { $own }; probada: { $tried }
cabinet-what-if-running = Comparando
cabinet-outcome = Resultado
cabinet-outcome-back = volver a un paso anterior
cabinet-outcome-up = probar el paso siguiente

# Gráficos, cada uno con una tabla al lado.
cabinet-charts = Gráficos
cabinet-chart-table = Lo mismo como tabla
cabinet-chart-day = { $day } { $month ->
        [1] ene
        [2] feb
        [3] mar
        [4] abr
        [5] may
        [6] jun
        [7] jul
        [8] ago
        [9] sept
        [10] oct
        [11] nov
       *[12] dic
    }
cabinet-chart-newest = Se dibujan las { $shown } sesiones más nuevas de { $all }.
cabinet-chart-discomfort = Molestia más alta, sesión a sesión
cabinet-chart-discomfort-says = { $sessions ->
        [one] 1 sesión
       *[other] { $sessions } sesiones
    } del { $first } al { $last }, agrupadas por el paso en uso; { $unrated ->
        [0] todas puntuadas
        [one] 1 sin puntuar, dejada como hueco
       *[other] { $unrated } sin puntuar, dejadas como huecos
    }. 0 es ninguna, 10 la peor imaginable. Contado por ella misma.
cabinet-chart-discomfort-axis = Molestia más alta, de 0 a 10
cabinet-mark-finished = terminada, con el tamaño y la posición del paso
cabinet-mark-stopped = interrumpida o sin empezar
cabinet-mark-different = terminada, con otro tamaño u otra posición
cabinet-mark-unrated = sin puntuar
cabinet-unrated = sin puntuar
cabinet-chart-days = Días practicados cada semana, junto al plan
cabinet-chart-days-axis = Días practicados
cabinet-chart-days-says = { $weeks ->
        [one] 1 semana
       *[other] { $weeks } semanas
    }: días con una sesión, y cuántos pedía el plan.
cabinet-chart-minutes = Minutos practicados cada semana, junto al plan
cabinet-chart-minutes-axis = Minutos practicados
cabinet-chart-minutes-says = { $weeks ->
        [one] 1 semana
       *[other] { $weeks } semanas
    }: minutos de todas las sesiones, sin las pausas, y cuántos pedía el plan.
cabinet-chart-weeks-note = Las semanas empiezan en lunes. Cada una se planifica con el paso en uso a su final; los días libres y los que no se muestran no cuentan en el plan.
cabinet-chart-weeks-newest = Se dibujan como mucho { $weeks } semanas, las más nuevas.
cabinet-mark-practised = practicado
cabinet-mark-planned = planificado, de mínimo a máximo
cabinet-planned-span = de { $least } a { $most }
cabinet-chart-steps = Pasos a lo largo del tiempo, con sugerencias y decisiones
cabinet-chart-steps-says = { $steps ->
        [one] 1 periodo en un paso
       *[other] { $steps } periodos en pasos
    } del { $first } al { $last }, y { $suggestions ->
        [0] ninguna sugerencia
        [one] 1 sugerencia
       *[other] { $suggestions } sugerencias
    } distinta de quedarse.
cabinet-chart-steps-note = Las sugerencias de quedarse no se dibujan. Subir no es el objetivo de todos los planes.
cabinet-mark-span = en uso
cabinet-mark-up-tried = paso siguiente sugerido, y probado
cabinet-mark-up-not = paso siguiente sugerido, y no probado
cabinet-mark-back-tried = paso anterior sugerido, y probado
cabinet-mark-back-not = paso anterior sugerido, y no probado
cabinet-mark-talk = lista para hablar
cabinet-mark-pause = pausa y llamar
cabinet-step-began = en uso desde aquí
cabinet-column-day = Día
cabinet-column-step = Paso
cabinet-column-peak = Molestia más alta
cabinet-column-how = Cómo
cabinet-column-week = Semana desde
cabinet-column-off = Días libres
cabinet-column-what = Qué
cabinet-column-chosen = Decisión
