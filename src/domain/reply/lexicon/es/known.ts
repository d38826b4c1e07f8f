import type { LexiconData } from '../schema.ts'

/** Zones, numbers, names and days as people mean to write them. */
export const bent: LexiconData['bent'] = `
espalda, lumbar, nalga, nalgas, gluteo, gluteos, cadera, caderas, muslo, muslos, ingle, rodilla, rodillas,
pantorrilla, pantorrillas, gemelo, gemelos, espinilla, canilla, tobillo, tobillos, talon, talones, planta,
dedos,
cero, cuatro, cinco, siete, ocho, nueve, ambas, ninguna, ninguno, todas, sesion, sesiones, tanda, tandas,
ejercicios, dolor, duele, molestia, ayer, anteayer, lunes, martes, miercoles, jueves, viernes, sabado,
domingo,
izquierda, izquierdo, derecha, derecho, hecha, hechas, perdon, mejor, peor, igual, fuerte, leve, hormigueo
`

/** Look-alikes first (rodillo is no knee, color no pain, cuadro no four), then words within a slip of one of ours. */
export const known: LexiconData['known'] = `
rodillo, rodillos, rodear, color, colores, calor, olor, olores, sabor, valor, doler, dolar, dolares, motor,
doctor,
cuadro, cuarto, cuartos, cuatros, siente, sientes, siete, tiene, viene, suele, suelen, vuele, vuela, huele,
huelen,
debe, deben, dele, ducha, hacha, fecha, lecha, leche, hacer, hacia, dicha, dichas, echa, echas, echo, fechas,
cinto, circo, cinta, cintura, pinto, mocho, choco, coche, noche, noches, mucho, mucha, bocho, nieve, mueve,
llueve,
breve, nueva, nuevo, nuevos, nuevas, leva, lleve, lleva, llave, nave, clave, haber, caer, leer, ver, traer,
ceder,
espada, falda, espera, espalda, esposa, ascenso, museo, mulo, musgo, suelo, pulso, pantalla, pantallas, panza,
bolsillo, castillo, tornillo, cigarrillo, bocadillo, ladrillo, tablilla, decision, cesion, pasion, tension,
presion,
lesion, lesiones, vision, mision, balon, salon, melon, jalon, tacon, talar, ingles, inglesa, angel, ajena,
cadena,
madera, cartera, carrera, cantera, caldera, manera, galleta, nalgada, lentes, muertes, partes, artes, antes,
puentes,
lados, todos, codos, modos, dados, dedico, ledo, remos, plata, plantar, plaza, banda, bandas, ronda, rondas,
tanta,
tantas, tango, venda, tienda, manda, anda, blanda, mantas, amas, armas, cambas, gemelas, gemela, gemido,
novelo, pelo,
canasta, camilla, canillita, costilla, semilla, silla, sillas, varilla, mejilla, orilla, pastilla, tortilla,
rosquilla,
nuestra, ninguneo, leve, nieves, jugo, juego, juegos, jueves, hueves, saldo, salado, sueldo, doblado, dormido,
domina,
perder, perro, pardon, patron, cordon, mayor, menor, mujer, mejora, mejoras, meter, pero, pera, peor, piel,
pieza,
real, iguales, legal, fuente, frente, suerte, puerta, fuerza, horas, hielo, cielo, hierro, ligero, cerro,
cerdo,
ciego, cera, cebo, cerca, cena, enero, acero, pecho, techo, hecho, derechos, directa, estrecha, izquierdas,
bosque,
trabajo, casa, familia, oficina, remo, remar, remando, bote, barco, rio, gimnasio, playa, lluvia, frio,
comida,
desayuno, almuerzo, dormir, cama, sofa, caminar, correr, nadar, entrenar, cuando, donde, quien, mientras,
siempre,
tarde, tiempo, gente, mundo, ciudad, calle, viaje, avion, tren, fiesta, boda, futbol, tenis, yoga, pilates,
pesas
`

export const keyboard: LexiconData['keyboard'] = ['qwertyuiop', 'asdfghjkl', 'zxcvbnm']
