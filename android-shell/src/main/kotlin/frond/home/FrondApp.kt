package frond.home

import android.app.Application

/** The app while its process lives. */
class FrondApp : Application()
