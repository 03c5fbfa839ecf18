package frond.home

/**
 * Marks what calls something that phones with Android 8 do not have. It asks first which phone it is; the build looks that
 * nothing unmarked calls anything so new.
 */
@Retention(AnnotationRetention.BINARY)
internal annotation class Newer
