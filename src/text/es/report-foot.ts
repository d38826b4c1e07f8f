/** What stands small at the foot of the report. */
export const FOOT: readonly string[] = [
  'Cautelas. Todo lo que hay aquí lo contó el cliente, en una línea o un formulario; nadie le exploró para ello. El alcance es el punto más lejano de la columna en que se notaron síntomas desde la última respuesta; el dolor es el peor desde entonces, de 0 a 10. Los días anotados después descansan en la memoria. Una señal negada, o nunca contada, no descarta nada: las señales sueltas aparecen en 0,19 a 0,43 de aquellos en quienes la imagen muestra la causa (Dionne 2019, Musculoskelet Sci Pract 42:125).',
  'Menores cambios que importan. Dolor: 2 puntos y 30 % del inicio (Ostelo 2008, Spine 33:90; Farrar 2001, Pain 94:149); una sola respuesta varía hasta 2 puntos (Childs 2005, Spine 30:1331). Alcance: una zona, práctica común. Intervalo: puntuación de Wilson (Newcombe 1998, Stat Med 17:857). Días anotados después: Stone 2003, Control Clin Trials 24:182.',
]
