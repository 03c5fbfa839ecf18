# What this phone can still show to somebody who looks. Said honestly: Frond is never invisible.

shows-title = Qué puede mostrar aún este teléfono
shows-says = Frond no puede hacerse invisible. Aquí está lo que puede encontrar alguien que mire este teléfono, lo que Frond hace, y lo que solo puedes hacer tú.
shows-danger = Si no es seguro que alguien encuentre esto, haz primero lo que te mantenga a salvo. Puedes borrar todo. Si corres peligro, mira a quién llamar.

shows-installed = La propia aplicación
shows-installed-frond = Su nombre y su imagen no dicen para qué sirve.
shows-installed-you = Aun así está en la lista de aplicaciones, en el historial de la tienda, y donde el teléfono muestra cuánto tiempo se usó cada una. Quien conozca su nombre sabe qué es.

shows-reminders = Recordatorios
shows-reminders-frond = Están apagados hasta que los enciendas, y solo dicen las palabras sencillas que elegiste de una lista.
shows-reminders-you = Que hay un recordatorio se puede ver en un teléfono bloqueado, en un reloj o en un coche. Apaga los recordatorios, u ocúltalos en los ajustes del teléfono.
shows-reminders-hidden = Están apagados hasta que los enciendas. Solo dicen las palabras sencillas que elegiste, y Frond pide al teléfono que no los muestre en la pantalla bloqueada ni en relojes.
shows-reminders-hidden-you = Una vibración o un sonido se puede notar de todos modos, y un teléfono sin bloqueo los muestra siempre. Apaga los recordatorios si eso es demasiado.

shows-calendar = Un archivo de calendario
shows-calendar-frond = Contiene las horas y las mismas palabras sencillas, y nada más. Frond lo hace solo cuando lo pides.
shows-calendar-you = Lo que está en tu calendario se queda ahí, y otras personas pueden compartir ese calendario. Bórralo allí tú.

shows-given = Resúmenes y copias que diste
shows-given-frond = Pueden ir sellados, y sus nombres no dicen nada. Frond no guarda ninguna lista de ellos.
shows-given-you = Frond no puede hacer que vuelvan. Bórralos donde los pusiste: descargas, mensajes, correo, otros dispositivos.

shows-screen = Imágenes de la pantalla
shows-screen-frond = Frond oculta sus pantallas en la lista de aplicaciones abiertas y en las capturas de pantalla.
shows-screen-part = Frond oculta sus pantallas en la lista de aplicaciones abiertas, y mientras se graba la pantalla o se ve en otra. No puede ocultarlas en una captura que alguien haga en este teléfono.
shows-screen-not = En este dispositivo Frond no puede ocultar sus pantallas en la lista de aplicaciones abiertas ni en las capturas de pantalla.
shows-screen-you = Cierra Frond cuando acabes. Alguien a tu lado, u otra cámara, aún puede verlo.
shows-screen-leave = Pulsa «Salir» y Frond se cierra enseguida; desaparece también de la lista de aplicaciones abiertas. Alguien a tu lado, u otra cámara, aún puede ver la pantalla.

shows-keyboard = El teclado
shows-keyboard-frond = Frond pide al teclado que no aprenda nada de lo que escribes.
shows-keyboard-not = En este dispositivo Frond no puede impedir que el teclado aprenda lo que escribes.
shows-keyboard-you = Algunos teclados aprenden de todos modos, o envían lo que se escribe a la empresa que los hace. Usa el que venía con el teléfono, o escribe poco.

shows-backups = Copias de seguridad del teléfono
shows-backups-frond = Tu diario está sellado esté donde esté, y Frond pide al teléfono que lo deje fuera de sus copias de seguridad.
shows-backups-not = Tu diario está sellado esté donde esté. En este dispositivo Frond no puede dejarlo fuera de las copias de seguridad.
shows-backups-you = Una copia de seguridad u otro dispositivo con la misma cuenta aún puede mostrar que la aplicación estuvo ahí.

shows-watched = Alguien que controla el teléfono
shows-watched-frond = Frond no puede hacer nada contra un programa que vigila la pantalla o lo que escribes.
shows-watched-you = Si crees que alguien vigila este teléfono, usa otro para pedir ayuda.
