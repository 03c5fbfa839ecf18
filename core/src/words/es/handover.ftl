# Un plan en camino: firma, palabras de la clave, qué cambia cuando llega otro.

handover-signed-title = Quién lo firmó
handover-first-key = Está firmado. Frond aún no conoce esta clave. La guarda si dices que sí.
handover-key-words = La clave, en palabras: { $words }
handover-compare = Tu clínica puede decirte sus palabras, en papel o por teléfono. Tienen que ser las mismas.
handover-same-key = Está firmado con la clave de tu clínica, como hasta ahora.
handover-follows = Tu clínica tiene una clave nueva. La clave que conoces firmó la nueva.
handover-other-key = Está firmado con otra clave, no con la que conoces. Puede venir de otra persona.
handover-known-key = La clave de tu clínica, en palabras: { $words }
handover-nobody-signed = No lo firmó nadie. Frond no puede saber quién lo hizo, ni si se cambió.
handover-signed-before = Hasta ahora tus planes venían firmados.

handover-different-title = Qué es distinto
handover-newer-revision = Ahora usas la revisión { $used }. Esta es la revisión { $this }.
handover-older-revision = Ahora usas la revisión { $used }. Esta es la revisión { $this }, que es más antigua.
handover-same-number = Tiene el mismo número que el plan que usas, { $this }, y no dice lo mismo. Tú usas la { $used }.
handover-another-plan = Es otro plan, no una revisión nueva del tuyo. Si dices que sí, ocupa el lugar del tuyo.
handover-newer-before = De ese plan ya usaste la revisión { $before }. Esta es la revisión { $this }, que es más antigua.
handover-now-says = Nuevo: { $line }
handover-no-longer = Ya no dice: { $line }

handover-although-unsigned = Sé de dónde viene este plan.
handover-although-other-key = Pregunté en mi clínica. Esta clave es suya.
handover-although-older = Pregunté en mi clínica. Vuelvo a usar el más antiguo.
handover-although-same = Pregunté en mi clínica. Este es el bueno.
refusal-unsigned = Nadie firmó este plan. Úsalo solo si sabes de dónde viene, y dilo antes.
refusal-other-key = Este plan está firmado con otra clave, no con la de tu clínica. Pregunta en tu clínica. Úsalo solo si te dicen que es suyo.
refusal-older-revision = Esta es una versión más antigua del plan que usas. Pregunta a tu especialista cuál es la buena. Úsala solo si te lo dice.
refusal-same-revision = Este plan tiene el número del que usas, y no dice lo mismo. Pregunta a tu especialista cuál es el bueno.

handover-too-long = Es más largo de lo que puede ser un plan. Comprueba que es el archivo correcto.
handover-not-signed = No es un plan firmado. Elige el archivo que entregó la clínica.
handover-not-a-link = No es un enlace a un plan. Copia toda la línea que empieza por FROND:
handover-newer = Este plan viene de un Frond más nuevo. Actualiza este para leerlo.
handover-damaged = Este archivo se cambió o se cortó por el camino. Pide que te lo envíen otra vez.
handover-garbled = A este enlace le falta algo, o tiene una letra mal. Escanéalo o cópialo otra vez.
handover-not-genuine = La firma no encaja. El plan se cambió, o lo hizo otra persona. No lo uses. Pídelo otra vez en tu clínica.
handover-words-needed = Este enlace está sellado. Escribe las { $count } palabras que te dijeron.
handover-word-not-listed = La palabra { $number } no está en la lista. Comprueba cómo se escribe.
handover-words-count = Tienen que ser { $count } palabras. Escríbelas todas, en su orden.
handover-wrong-words = Estas palabras no abren este enlace. Compruébalas, o pide las correctas en tu clínica.
handover-too-large = Este plan es demasiado largo para un solo código: { $characters } caracteres, y { $most } es lo máximo. Entrega el archivo.
handover-no-room = Este aparato no tiene sitio para hacerlo ahora. Cierra otros programas e inténtalo otra vez.

handover-link = O el enlace del código
handover-link-hint = Empieza por FROND: y es una sola línea larga.
handover-words = Las palabras que te dijeron
handover-words-hint = Solo si el enlace está sellado. Da igual si escribes en mayúsculas o minúsculas.
handover-knowing = Antes de decir que sí

handover-code-title = Un código para escanear
handover-code-sealed = Escanéalo con Frond. Se abre con las palabras que te dijeron.
handover-code-open = Escanéalo con Frond.

handover-title = Entregar un plan
handover-programme-file = El programa, como archivo
handover-whose = Un plan para { $whom }, revisión { $number }
handover-way = ¿Quién puede leer el código?
handover-way-sealed = Quien sepa cuatro palabras que yo digo
handover-way-open = Quien vea el código
handover-way-hint = El archivo firmado se hace en los dos casos. No va sellado.
handover-way-missing = Elija quién puede leer el código.
handover-sign = Firmarlo
handover-ready = El plan está firmado
handover-your-key = Las palabras de su clave
handover-your-key-how = Dé estas palabras en papel o por teléfono. El teléfono muestra las mismas, y así se pueden comparar.
handover-say = Diga estas palabras
handover-say-how = Abren el código. Dígalas; no las escriba en la misma hoja.
handover-is-open = El código está abierto. Quien lo vea puede leer el plan.
handover-link-title = El código como enlace
handover-sheet = Una hoja para imprimir
handover-sheet-title = Para tu teléfono
handover-sheet-from = De { $clinic }, número { $number }
handover-sheet-key = Frond muestra seis palabras cuando lo escaneas. Tienen que ser estas: { $words }
handover-save = Guardar el archivo firmado
handover-file-how = El archivo siempre funciona, y no va sellado. Envíelo solo de un modo que otros no puedan leer.
handover-done = Dejarlo
