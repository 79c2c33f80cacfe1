# Not checked by a native speaker.
digest-files-nothing = Daar is nog niks om te teken nie: geen kind van hierdie klas het in hierdie dae geoefen nie.
digest-files-no-picture = Ek kon nie daardie prent teken nie. Die boodskap en die tabel sê dieselfde; gebruik asseblief dié.
