# The desk as a whole: keys, opening, the way around.

desk-banner = Sobre este escritorio
desk-banner-says = Este es su escritorio.
desk-decides-nothing = Frond no da consejos y no tiene ninguna dosis propia. Cada número de un plan es suyo, dentro de su licencia y de las normas de su lugar.
desk-no-way-in = Esta página solo se abre con la dirección que Frond mostró, y solo una vez. Inicie frond desk de nuevo para obtener otra.
desk-not-found = No existe esa página. Vuelva al escritorio.
desk-back-home = Al escritorio
desk-back = Atrás
desk-later = Más tarde
desk-home-title = Su escritorio
desk-lock = Cerrar el escritorio con llave

desk-first-title = Claves para su escritorio
desk-first = Frond crea claves para usted: una firma los planes que entrega, para que un teléfono los distinga de los de cualquier otra persona; otra abre los resúmenes sellados para usted. Se quedan en este ordenador, bajo una frase de acceso.
desk-first-forgotten = Una frase de acceso olvidada no la puede averiguar nadie, tampoco Frond. Lo que está sellado para usted queda entonces cerrado.
desk-make-keys = Crear claves
desk-passphrase = Frase de acceso
desk-passphrase-now = Su frase de acceso actual
desk-new-passphrase = Frase de acceso nueva
desk-new-passphrase-hint = Varias palabras que solo usted juntaría. Quien tenga los archivos de este escritorio puede probar cuantas veces quiera.
desk-restore = Tomar claves de una copia
desk-restore-title = Claves de una copia
desk-restore-how = Elija el archivo que se guardó como copia de sus claves y escriba la frase de acceso con la que se hizo.
desk-copy-file = La copia de sus claves, como archivo

desk-open-title = Abra su escritorio
desk-open = Abrir
desk-open-forgotten = Si olvidó la frase de acceso: una copia de las claves hecha con una frase anterior se abre con esa, en otra carpeta (frond desk --folder).

desk-keys = Claves
desk-keys-are = Estas claves firman sus planes y abren lo que está sellado para usted.
desk-not-copied = Todavía no hay ninguna copia de sus claves. Si se pierde este ordenador, nadie puede abrir lo que se selló para usted, y los teléfonos no reconocerán su próximo plan.
desk-copied = Se miró una copia de estas claves, y se abre.
desk-recipient = Para quien sella algo para usted
desk-recipient-is = Esta línea se puede dar a cualquiera. Quien la tiene puede sellar un resumen para usted, y no puede abrir ninguno. Sus planes la llevan cuando usted se nombra como lector.
desk-copy = Hacer una copia de sus claves
desk-copy-title = Una copia de sus claves
desk-copy-how = Guarde este archivo fuera de este ordenador, en algo que quede bajo llave. Solo se abre con su frase de acceso.
desk-copy-save = Guardar la copia
desk-copy-look-title = ¿Se abre la copia?
desk-copy-look-how = Elija el archivo donde lo puso. Frond mira si se abre y si contiene sus claves.
desk-copy-look = Mirar la copia
desk-change-passphrase = Cambiar la frase de acceso
desk-change-passphrase-how = Desde ahora la nueva abre este escritorio. Las copias anteriores se siguen abriendo con la antigua; haga una copia nueva y destruya esas.
desk-new-keys = Crear claves nuevas
desk-new-keys-when = Las claves nuevas son para cuando otra persona puede conocer las antiguas, o sus normas lo piden.
desk-new-keys-signed = La clave antigua firma la nueva, así un teléfono que ya le conoce muestra el cambio y pregunta. Lo que se selló para las claves antiguas se sigue abriendo aquí.
desk-new-keys-limit = Quien tiene las claves antiguas puede seguir abriendo lo que se selló para ellas, y también podría firmar. Avise de palabra a sus pacientes y comparen las palabras de la clave.

desk-error-keys-there = Ya hay claves; no se cambió nada. Abra el escritorio con su frase de acceso.
desk-error-keys-none = Aquí no hay claves. Créelas primero, o tómelas de una copia.
desk-error-passphrase = Esta frase de acceso no lo abre. Revise las mayúsculas y el teclado, y pruebe de nuevo.
desk-error-empty-passphrase = Escriba la frase de acceso.
desk-error-not-keys = Este archivo no contiene claves, o está dañado. Elija el archivo que se guardó como copia de las claves.
desk-error-newer = Esto lo escribió un Frond más nuevo. Actualice Frond para usarlo.
desk-error-other-keys = Esta es una copia de otras claves, no de las de este escritorio. Guarde la copia de nuevo y elija ese archivo.
desk-error-not-sealed = Las claves no se pudieron sellar; no se cambió nada. Pruebe de nuevo.
desk-error-full = El disco está lleno; no se cambió nada. Haga sitio y pruebe de nuevo.
desk-error-folder = La carpeta del escritorio no se puede leer o escribir. Compruebe que está ahí y que es suya, y pruebe de nuevo.
