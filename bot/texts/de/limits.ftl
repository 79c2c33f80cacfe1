# Not checked by a native speaker.
limits-codes-paused = Zu viele Ihrer Codes haben nicht gepasst. Versuchen Sie es in { $wait } wieder oder bitten Sie die Lehrkraft um einen neuen Link.
limits-left-out = Von Ihnen kam viel auf einmal, deshalb habe ich einen Teil ausgelassen.
limits-what-is-kept = Was ich beantwortet habe, ist gespeichert. Warten Sie einen Moment und senden Sie dann /today oder /class, um den Stand zu sehen.
