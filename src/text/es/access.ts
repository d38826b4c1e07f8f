import type { Texts } from '../index.ts'

/** Who may do what, and what to do instead. */
export const access: Texts['access'] = {
  unknownCommand: (name) => `No existe el comando “/${name}”. Prueba con /help.`,
  oddOption: (name) =>
    `No puedo leer lo que pone en “${name}”. Elígelo o escríbelo otra vez; no se ha cambiado nada.`,
  onlyInServer: 'Esto es para coaches, en el servidor de la práctica.',
  onlyKeeper: 'Solo quien puede administrar el servidor puede configurar el bot.',
  onlyCoach: 'Esto es para quienes tienen el rol de coach.',
  setUpFirst: 'El bot aún no está configurado aquí. Quien puede administrar el servidor usa /set-up.',
}
