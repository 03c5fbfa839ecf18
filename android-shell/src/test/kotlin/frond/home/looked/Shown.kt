package frond.home.looked

import org.robolectric.RuntimeEnvironment

/** The ways in which every screen is looked at: theme, text size, width, direction, language. */
enum class Shown(private val qualifiers: String, private val letters: Float, val language: String) {
    LIGHT("w411dp-h891dp-xhdpi", 1f, "en"),
    DARK("w411dp-h891dp-night-xhdpi", 1f, "en"),
    LARGE("w411dp-h891dp-xhdpi", 2f, "en"),
    NARROW("w320dp-h640dp-xhdpi", 2f, "en"),
    MIRRORED("w411dp-h891dp-xhdpi", 1f, "ar-XB"),
    SPANISH("w411dp-h891dp-xhdpi", 1f, "es");

    /** The phone looks like this from now on. */
    fun set() {
        val locale = when (language) {
            "ar-XB" -> "ar-rXB"
            "es" -> "es-rES"
            else -> "en-rGB"
        }
        val direction = if (this == MIRRORED) "ldrtl" else "ldltr"
        RuntimeEnvironment.setQualifiers("$locale-$direction-$qualifiers")
        RuntimeEnvironment.setFontScale(letters)
    }

    val tag: String get() = name.lowercase()
}
