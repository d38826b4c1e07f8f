/**
 * The plainest wishes of each language, which are heard in the others too: nobody has to find the right language to
 * leave, to pause or to be helped.
 */
export const plainWishes = {
  en: {
    leave:
      'i want to leave, i want to quit, i want to stop, i want to stop this, i quit, stop messaging me, stop writing to me, delete my data, unsubscribe',
    pause: 'i need a break, i want a break, i want to pause, take a break please, pause please',
    resume: 'i want to continue, i want to start again, i am back, im back',
    help: 'help me, i need help, help please, please help',
    wordOfLeave: 'leave, quit, stop, cancel',
    wordOfPause: 'pause',
    wordOfHelp: 'help',
  },
  es: {
    leave:
      'quiero dejarlo, quiero irme, quiero salir, quiero salirme, quiero parar, no quiero seguir, no me escribas mas, no me escriban mas, borra mis datos, dame de baja, darme de baja',
    pause:
      'necesito un descanso, necesito una pausa, quiero una pausa, quiero hacer una pausa, pausa por favor',
    resume: 'quiero volver, quiero seguir, ya volvi, he vuelto',
    help: 'necesito ayuda, ayudame, ayuda por favor, no entiendo',
    wordOfLeave: 'baja, salir, cancelar',
    wordOfPause: 'pausa',
    wordOfHelp: 'ayuda',
  },
} as const
