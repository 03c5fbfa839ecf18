package frond.home

/**
 * What a fault of the app tells the phone and, where she lets the phone send them, its makers: which sort and where in the
 * program. Its message is left out, since it can hold what somebody wrote: a number that could not be read, a record.
 *
 * What the phone itself writes into its log before it asks an app is out of reach; only whoever has the unlocked phone on a
 * cable reads that.
 */
internal class Faults private constructor(private val next: Thread.UncaughtExceptionHandler) : Thread.UncaughtExceptionHandler {
    override fun uncaughtException(thread: Thread, fault: Throwable) = next.uncaughtException(thread, bare(fault))

    /** Which sort it was, and where. */
    class Fault(sort: String, cause: Throwable?) : Error(sort, cause)

    companion object {
        /** More causes than this are of no use to anybody. */
        private const val DEEP = 8

        /** From here on. */
        fun watch() {
            val next = Thread.getDefaultUncaughtExceptionHandler()
            if (next != null && next !is Faults) Thread.setDefaultUncaughtExceptionHandler(Faults(next))
        }

        /** The same fault without a word. */
        fun bare(fault: Throwable, deep: Int = DEEP): Throwable {
            val cause = fault.cause?.takeIf { it !== fault && deep > 0 }?.let { bare(it, deep - 1) }
            val sort = (fault as? Fault)?.message ?: fault.javaClass.name
            return Fault(sort, cause).apply { stackTrace = fault.stackTrace }
        }
    }
}
