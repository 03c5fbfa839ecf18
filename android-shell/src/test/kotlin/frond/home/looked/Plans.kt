package frond.home.looked

import org.json.JSONArray
import org.json.JSONObject
import java.io.File

/** Invented plans, made from the project's fixtures. Nobody's advice. */
object Plans {
    private val root = File(checkNotNull(System.getProperty("frond.root")))

    fun fixture(path: String): File = root.resolve("fixtures").resolve(path)

    /** The graded plan, with a rule that may speak after one session, a breath that is held, and questions of its own. */
    fun quick(): ByteArray {
        val plan = JSONObject(fixture("programmes/1-graded-then-positions.json").readText())
        plan.getJSONObject("rule").put(
            "step_up",
            JSONObject().put(
                "all_of",
                JSONArray(
                    """[{"criterion": "sessions", "practised_days": 1, "within_days": 7},
                        {"criterion": "discomfort_at_most", "rating": "peak", "at_most": 3, "last": 1},
                        {"criterion": "feels_ready"}]""",
                ),
            ),
        )
        // It does not run out while the test lives in its own time.
        plan.put("review_by", "2099-12-31")
        plan.getJSONArray("practices").getJSONObject(0).getJSONObject("breath").put("hold_in_tenths", 20)
        plan.put("ratings_asked", JSONArray("""["before", "worry"]"""))
        plan.put("activities", JSONArray("""["Sitting through a film"]"""))
        plan.put("goals", JSONArray("""["An examination without fear"]"""))
        plan.put("manner", JSONObject("""{"numbers_folded": false, "grounding_first": true, "contact_on_stop": true}"""))
        return plan.toString().toByteArray()
    }
}
