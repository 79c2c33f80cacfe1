# Not checked by a native speaker.
moved-heading = { $child } está ahora en { $class }.
moved-practises = Desde la próxima tarde se practica lo que practica { $class }. La práctica llega { $days } a las { $time }.
moved-no-plan = La práctica llega en cuanto el docente haya hecho un plan; después, { $days } a las { $time }.
moved-kept = No tiene que hacer nada. Lo marcado hasta ahora se conserva, y ahora lo ven los docentes de allí.
