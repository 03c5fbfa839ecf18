package frond.home

import android.app.Activity
import android.os.Bundle
import android.widget.TextView

/** The one window. */
class MainActivity : Activity() {
    override fun onCreate(state: Bundle?) {
        super.onCreate(state)
        setContentView(TextView(this).apply { text = "Frond" })
    }
}
