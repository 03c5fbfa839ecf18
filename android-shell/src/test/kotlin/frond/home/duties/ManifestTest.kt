package frond.home.duties

import frond.home.duties.reminders.Reminders
import frond.home.looked.FrondRunner
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import java.util.concurrent.TimeUnit

/**
 * The manifest that is packaged, read back by aapt2 from the very file that the app is made of: what it may do, what
 * others can reach, and that nothing of it is backed up. What stands here is all there is; one more of anything fails.
 */
@RunWith(FrondRunner::class)
class ManifestTest {
    private val packaged = checkNotNull(System.getProperty("frond.package"))

    private fun aapt2(vararg command: String): String {
        val process = ProcessBuilder("aapt2", "dump", *command).redirectError(ProcessBuilder.Redirect.DISCARD).start()
        val said = process.inputStream.bufferedReader().readText()
        assertTrue(process.waitFor(30, TimeUnit.SECONDS))
        assertEquals(0, process.exitValue())
        return said
    }

    /** One element of the manifest. */
    private class Element(val name: String, val depth: Int, val parent: Element?) {
        val values = mutableMapOf<String, String>()
        val children = mutableListOf<Element>()

        operator fun get(name: String): String? = values[name]

        fun all(name: String): List<Element> = children.filter { it.name == name } + children.flatMap { it.all(name) }
    }

    private fun tree(file: String): Element {
        val root = Element("", -1, null)
        var last = root
        for (line in aapt2("xmltree", packaged, "--file", file).lines()) {
            val depth = line.length - line.trimStart().length
            val text = line.trim()
            if (text.startsWith("E: ")) {
                var parent = last
                while (parent.depth >= depth) parent = parent.parent!!
                last = Element(text.removePrefix("E: ").substringBefore(" ("), depth, parent).also { parent.children += it }
            } else if (text.startsWith("A: ")) {
                val (key, value) = text.removePrefix("A: ").split("=", limit = 2)
                last.values[key.substringAfterLast('/').substringAfter("android:").substringBefore('(')] =
                    if (value.startsWith('"')) value.substring(1).substringBefore('"') else value
            }
        }
        return root
    }

    private val manifest = tree("AndroidManifest.xml")
    private val app = manifest.all("application").single()
    private val components = listOf("activity", "activity-alias", "service", "receiver", "provider").flatMap(app::all)

    @Test
    fun `it may do three things and has no network`() {
        val asks = setOf("POST_NOTIFICATIONS", "RECEIVE_BOOT_COMPLETED", "VIBRATE").map { "android.permission.$it" }.toSet()
        assertEquals(asks, manifest.all("uses-permission").map { it["name"] }.toSet())
        assertEquals(emptyList<Element>(), manifest.all("uses-permission-sdk-23"))
        assertEquals(emptyList<Element>(), manifest.all("permission"))
        assertEquals(emptyList<Element>(), manifest.all("uses-feature").filter { it["required"] != "false" })
        // Said twice, because it is promised: by another way of reading the same file.
        val badging = aapt2("badging", packaged)
        for (never in listOf("INTERNET", "NETWORK", "CALL_PHONE", "EXACT_ALARM", "FOREGROUND_SERVICE", "READ_", "WRITE_", "CAMERA")) {
            assertFalse(never, badging.lines().any { it.startsWith("uses-permission") && it.contains(never) })
        }
    }

    @Test
    fun `its parts are these, and others reach the one window alone`() {
        val parts = components.map { "${it.name} ${it["name"]}" }.toSet()
        assertEquals(
            setOf(
                "activity .MainActivity", "receiver .duties.reminders.ReminderReceiver",
                "receiver .duties.reminders.PlanAnewReceiver", "provider .duties.files.SharedFiles",
            ),
            parts,
        )
        assertEquals(listOf(".MainActivity"), components.filter { it["exported"] == "true" }.map { it["name"] })
        assertTrue("each says it", components.all { it["exported"] == "true" || it["exported"] == "false" })
        assertEquals("true", app.all("provider").single()["grantUriPermissions"])
        assertEquals("frond.home.shared", app.all("provider").single()["authorities"])
    }

    @Test
    fun `the window takes plans and nothing else`() {
        val window = app.all("activity").single()
        fun of(filter: Element, what: String, value: String) = filter.all(what).mapNotNull { it[value] }.toSet()
        val filters = window.all("intent-filter").map { filter ->
            listOf(of(filter, "action", "name"), of(filter, "data", "scheme"), of(filter, "data", "mimeType"))
                .map { set -> set.map { it.substringAfter("android.intent.action.") }.toSortedSet().toList() }
        }
        val files = listOf("application/json", "application/octet-stream")
        assertEquals(
            listOf(
                listOf(listOf("MAIN"), emptyList(), emptyList()),
                listOf(listOf("VIEW"), listOf("FROND", "frond"), emptyList()),
                listOf(listOf("VIEW"), listOf("content"), files),
                listOf(listOf("SEND"), emptyList(), files + "text/plain"),
            ),
            filters,
        )
        assertEquals("singleTask", "2", window["launchMode"])
        // A practice under way has to be found again at once; quick exit takes the window out of the list.
        assertEquals("false", window["excludeFromRecents"])
    }

    @Test
    fun `the alarm is set anew after each of these`() {
        val anew = app.all("receiver").single { it["name"] == ".duties.reminders.PlanAnewReceiver" }
        assertEquals(Reminders.PLAN_ANEW, anew.all("action").map { it["name"] }.toSet())
        assertEquals(4, anew.all("action").size)
    }

    @Test
    fun `nothing is backed up or moved to another phone`() {
        assertEquals("false", app["allowBackup"])
        assertTrue("rules for Android 12 and newer", app["dataExtractionRules"]!!.startsWith("@0x"))
        assertTrue("rules for older ones", app["fullBackupContent"]!!.startsWith("@0x"))
        assertEquals("false", app["usesCleartextTraffic"])
        assertEquals("false", app["hasFragileUserData"])
        // Every domain of https://developer.android.com/identity/data/autobackup, "XML config syntax" (from memory).
        val domains = setOf(
            "root", "file", "database", "sharedpref", "external",
            "device_root", "device_file", "device_database", "device_sharedpref",
        )
        val extraction = tree("res/xml/no_extraction.xml")
        for (way in listOf("cloud-backup", "device-transfer")) {
            val rules = extraction.all(way).single()
            assertEquals(way, emptyList<Element>(), rules.all("include"))
            assertEquals(way, domains, rules.all("exclude").map { it["domain"] }.toSet())
        }
        val older = tree("res/xml/no_backup.xml").all("full-backup-content").single()
        assertEquals(emptyList<Element>(), older.all("include"))
        assertEquals(domains, older.all("exclude").filter { it["path"] == "." }.map { it["domain"] }.toSet())
    }

    @Test
    fun `it runs from Android 8 on, under a neutral label, and other programs are looked for by one thing alone`() {
        val sdk = manifest.all("uses-sdk").single()
        assertEquals("26", sdk["minSdkVersion"])
        assertEquals("34", sdk["targetSdkVersion"])
        assertTrue(aapt2("badging", packaged).lines().any { it == "application-label:'Frond'" })
        assertEquals(
            listOf("android.intent.action.TTS_SERVICE"),
            manifest.all("queries").single().all("action").map { it["name"] },
        )
    }
}
